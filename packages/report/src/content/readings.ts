import type { CaseHeading, CaseReading, Stage } from "@halfturn/casefile";
import type { Block, Cell, Column } from "./blocks.js";
import type { Subject } from "./subject.js";

const start = (label: string, weight: number): Column => ({ label, align: "start", weight });
const end = (label: string, weight: number): Column => ({ label, align: "end", weight });

function whereText({ words, nameOf }: Subject, reading: CaseReading): string {
  if ("between" in reading) return words.readings.between(nameOf(reading.between[1]), nameOf(reading.between[0]));
  const [shaft = "", place] = reading.at.split(":");
  if ("face" in reading) return words.readings.face(nameOf(shaft));
  return place === "source-end" || place === "driven-end" ? words.readings.end[place](nameOf(shaft)) : nameOf(shaft);
}

function lowerText({ words, catalogue: { labels } }: Subject, reading: CaseReading): string {
  if ("face" in reading) return reading.topLeans ? words.readings.topToward[reading.topLeans] : labels.level;
  if (!("lower" in reading) || !reading.lower) return labels.level;
  const lower = reading.lower === "driven-end" ? labels.drivenEndLower : labels.sourceEndLower;
  return "between" in reading ? words.readings.relative(lower) : lower;
}

function readingRow(subject: Subject, stage: Stage, reading: CaseReading, index: number): readonly Cell[] {
  const { words, numbers, catalogue } = subject;
  const path = `gauging[${subject.gauging}].readings[${index}]`;
  const about = subject.findings.filter(({ finding }) => finding.path === path || finding.path.startsWith(`${path}.`));
  const setAside = about.some(({ finding }) => finding.code === "gauging.reading-set-aside");
  const remarks = [
    ...(setAside ? [words.readings.setAside] : []),
    ...(about.length > 0 ? [words.readings.seeFinding(numbers.all(about.map(({ entry }) => String(entry.number))))] : []),
    ...(reading.notes ? [reading.notes] : []),
  ];
  return [
    { text: String(index + 1) },
    { text: whereText(subject, reading) },
    { text: numbers.gaugedAngle(reading.deg), ...(setAside ? { struck: true } : {}) },
    { text: lowerText(subject, reading) },
    { text: catalogue.labels[reading.side].toLocaleLowerCase(catalogue.language) },
    { text: catalogue.labels.stages[stage] },
    { text: remarks.join("; ") },
  ];
}

function headingRow(subject: Subject, heading: CaseHeading): readonly Cell[] {
  const { words, numbers } = subject;
  const angle = "deg" in heading;
  const over = angle ? null : heading.overMm;
  return [
    { text: subject.nameOf(heading.of) },
    { text: angle ? numbers.gaugedAngle(heading.deg as number) : numbers.length(heading.lateralMm) },
    { text: heading.toward ? words.readings.toward[heading.toward] : words.readings.straight },
    { text: over === null ? "" : over === undefined ? words.readings.wholeLength : numbers.length(over) },
    { text: heading.notes ?? "" },
  ];
}

/** The readings as they were taken: what the display showed and the words beside it, never a sign. */
export function readingsBlocks(subject: Subject): readonly Block[] {
  const { words, gauged, catalogue } = subject;
  const at = words.readings;
  if (!gauged || gauged.readings.length === 0) return [{ kind: "paragraph", text: at.none }];
  const headings = gauged.headings ?? [];
  return [
    {
      kind: "table",
      caption: at.caption,
      columns: [
        end(at.number, 0.6),
        start(at.where, 3.4),
        end(at.shown, 1.2),
        start(at.lower, 2.3),
        start(at.side, 1.4),
        start(at.stage, 1.3),
        start(at.remark, 2.4),
      ],
      rows: gauged.readings.map((reading, k) => readingRow(subject, gauged.stage, reading, k)),
      notes: gauged.notes ? [gauged.notes] : [],
    },
    headings.length === 0
      ? { kind: "paragraph", text: at.headingNotMeasured }
      : {
          kind: "table",
          caption: at.headingCaption,
          columns: [
            start(catalogue.labels.shaft, 2),
            end(at.offset, 1.4),
            start(catalogue.labels.heading, 2.4),
            end(at.over, 1.4),
            start(at.remark, 2),
          ],
          rows: headings.map((heading) => headingRow(subject, heading)),
          notes: [],
        },
  ];
}
