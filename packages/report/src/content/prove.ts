import type { PredictionVerdict, ShaftVerdict } from "@halfturn/engine/correction";
import { comparisonView } from "@halfturn/figures";
import type { Block, Cell, Column, Notice, Section, Table } from "./blocks.js";
import { comparedQuantities, quantityCell } from "./compared-quantities.js";
import type { CorrectedDriveline, CorrectionSubject } from "./correction-subject.js";
import { dayText } from "./day-text.js";
import { degreesText } from "./estimates.js";
import { figureOf, reportFigureOptions } from "./figures.js";
import { foretoldPicture, gaugedPicture } from "./predicted-picture.js";

/** 95 % of a normal difference, as the judgement itself uses. */
const COVERAGE_FACTOR = 1.96;

const start = (label: string, weight: number): Column => ({ label, align: "start", weight });
const end = (label: string, weight: number): Column => ({ label, align: "end", weight });

const nameOfShaft = ({ drivelines }: CorrectionSubject, { drivelineId, shaft }: ShaftVerdict): string =>
  drivelines.find(({ driveline }) => driveline.id === drivelineId)?.nameOf(shaft) ?? shaft;

/** Whether the vehicle now stands within its limits, whatever was foretold. */
const allWithin = ({ drivelines }: CorrectionSubject): boolean =>
  drivelines.every(({ after }) => {
    if (!after) return true;
    const { joints, cancellation, motion } = after.analysis;
    return [...joints.map(({ verdict }) => verdict), cancellation.verdict, motion.verdict].every((verdict) => verdict === "within");
  });

function differenceLine(subject: CorrectionSubject, verdict: ShaftVerdict): string {
  const { words, numbers } = subject;
  const { predicted, measured, u } = verdict;
  return words.correct.differsLine(
    nameOfShaft(subject, verdict),
    degreesText(predicted, numbers),
    degreesText(measured, numbers),
    degreesText(Math.abs(measured - predicted), numbers),
    degreesText(COVERAGE_FACTOR * u, numbers),
  );
}

/** How the prediction held, in words; also for the conclusion of the report. */
export function proofNotice(subject: CorrectionSubject): Notice {
  const { reported, words, catalogue, text } = subject;
  const notice = (tone: Notice["tone"], title: string, lines: readonly string[] = []): Notice => ({ kind: "notice", tone, title, lines });
  const { judged } = reported;
  if (!judged) return notice("stop", words.correct.notHeldAgainst);
  if (!judged.ok) return notice("none", words.correct.notJudged, judged.reasons.map(text.reason));
  const { verdict, shafts } = judged.value;
  const title = catalogue.correction.predictionVerdicts[verdict];
  if (verdict === "not-gauged") return notice("none", title);
  if (verdict === "confirmed") return notice("good", title, allWithin(subject) ? [] : [words.correct.stillOut]);
  return notice(
    "unsure",
    title,
    shafts.filter(({ agrees }) => !agrees).map((one) => differenceLine(subject, one)),
  );
}

function shaftTable(subject: CorrectionSubject, on: CorrectedDriveline, shafts: readonly ShaftVerdict[]): readonly Table[] {
  const { words, catalogue, numbers } = subject;
  const own = shafts.filter(({ drivelineId }) => drivelineId === on.driveline.id);
  if (own.length === 0) return [];
  const signed = (angle: number): string => {
    const text = degreesText(angle, numbers);
    return angle > 0 && text !== degreesText(0, numbers) ? `+${text}` : text;
  };
  return [
    {
      kind: "table",
      caption: words.correct.shaftsOf(on.name),
      columns: [
        start(catalogue.labels.shaft, 2.2),
        end(words.correct.before, 1.3),
        end(catalogue.correction.foretold, 1.3),
        end(catalogue.correction.measured, 1.3),
        end(words.correct.difference, 1.5),
        start(words.correct.agreement, 1.8),
      ],
      rows: own.map((one): readonly Cell[] => [
        { text: on.nameOf(one.shaft) },
        { text: degreesText(one.before, numbers) },
        { text: degreesText(one.predicted, numbers) },
        { text: degreesText(one.measured, numbers) },
        { text: signed(one.measured - one.predicted), detail: `± ${degreesText(COVERAGE_FACTOR * one.u, numbers)}` },
        one.agrees ? { text: words.correct.agrees, tone: "good" } : { text: words.correct.differs, tone: "unsure" },
      ]),
      notes: [words.tables.inclinationSign],
    },
  ];
}

function resultTable(subject: CorrectionSubject, on: CorrectedDriveline): readonly Table[] {
  const { words, catalogue } = subject;
  const { before, after } = on;
  if (!after) return [];
  const foretold = on.foretold.find(({ asGauged }) => asGauged)?.of;
  const quantities = comparedQuantities(subject, on).filter(({ ofResult }) => ofResult(after.analysis) !== null);
  if (quantities.length === 0) return [];
  return [
    {
      kind: "table",
      caption: words.correct.resultsOf(on.name),
      columns: [
        start(words.tables.quantity, 1.8),
        start(words.correct.before, 2),
        ...(foretold ? [start(catalogue.correction.foretold, 2)] : []),
        start(catalogue.correction.measured, 2),
      ],
      rows: quantities.map((quantity): readonly Cell[] => [
        { text: quantity.label },
        before ? quantityCell(subject, quantity, quantity.ofResult(before.analysis), before.analysis.withheld) : { text: "–" },
        ...(foretold ? [quantityCell(subject, quantity, quantity.ofForetold(foretold))] : []),
        quantityCell(subject, quantity, quantity.ofResult(after.analysis), after.analysis.withheld),
      ]),
      notes: foretold ? [words.correct.asGaugedNote] : [],
    },
  ];
}

function proofFigure(subject: CorrectionSubject, on: CorrectedDriveline): readonly Block[] {
  const { words, catalogue, report } = subject;
  const { before, after } = on;
  if (!before || !after) return [];
  const state = on.foretold.find(({ asGauged }) => asGauged);
  const foretold = state && foretoldPicture(subject, on, state);
  // What it was before stands beside what was foretold already, where the correction was chosen.
  const svg = comparisonView(
    [
      foretold
        ? { name: catalogue.correction.foretold, picture: foretold }
        : { name: words.correct.before, picture: gaugedPicture(subject, on, before) },
      { name: catalogue.correction.measured, picture: gaugedPicture(subject, on, after) },
    ],
    reportFigureOptions(report),
  );
  return [figureOf(words.correct.figureOf(on.name), svg)];
}

/** What to look at where the two differ, else the road. */
function nextBlocks({ words, catalogue }: CorrectionSubject, verdict: PredictionVerdict | null): readonly Block[] {
  const { correction, cautions } = catalogue;
  if (verdict === null || verdict.verdict === "not-gauged") return [];
  const road = { text: words.correct.road, cautions: [cautions.texts["prove-from-slow"], cautions.texts["driver-never-operates"]] };
  const looks = verdict.lookAt.map((code) => ({ text: correction.looks[code], cautions: [] }));
  const title = looks.length > 0 ? correction.lookAt : catalogue.labels.doNext;
  return [{ kind: "steps", title, cautionLabel: words.correct.caution, items: looks.length > 0 ? looks : [road] }];
}

function gaugedOn({ words, catalogue, drivelines, report }: CorrectionSubject): string {
  const days = drivelines.flatMap(({ after }) => {
    const takenAt = after?.gauging == null ? undefined : report.case.gauging?.[after.gauging]?.takenAt;
    return takenAt ? [dayText(takenAt, catalogue.language)] : [];
  });
  const [day] = days;
  return day === undefined ? words.correct.provedUndated : words.correct.provedBy(day);
}

function proofSection(subject: CorrectionSubject): Section {
  const { judged } = subject.reported;
  const verdict = judged?.ok ? judged.value : null;
  return {
    title: gaugedOn(subject),
    level: 2,
    blocks: [
      proofNotice(subject),
      ...nextBlocks(subject, verdict),
      ...subject.drivelines.flatMap((on) => [
        ...shaftTable(subject, on, verdict?.shafts ?? []),
        ...resultTable(subject, on),
        ...proofFigure(subject, on),
      ]),
    ],
  };
}

/** Whether anything was gauged after the correction. */
export const isProved = ({ reported }: CorrectionSubject): boolean => reported.after.length > 0;

/** Each prediction held against what was gauged after it. */
export function proveSections(subjects: readonly CorrectionSubject[], title: string): readonly Section[] {
  const proved = subjects.filter(isProved);
  return proved.length === 0 ? [] : [{ title, level: 1, blocks: [] }, ...proved.map(proofSection)];
}
