import type { Estimate, Verdict } from "@halfturn/engine/analysis";
import { nameOfDriveline } from "@halfturn/words";
import type { Cell, Section } from "./blocks.js";
import { degreesText, toneOf } from "./estimates.js";
import { highestSpeed } from "./motion-results.js";
import type { Subject } from "./subject.js";

function resultCell(
  subject: Subject,
  estimate: Estimate | null | undefined,
  format: (value: number) => string,
  verdict: Verdict | null,
): Cell {
  const { verdicts } = subject.catalogue.labels;
  const text = estimate ? format(estimate.value) : subject.catalogue.labels.notKnown;
  return verdict === null ? { text } : { text: `${text}, ${verdicts[verdict]}`, tone: toneOf(verdict) };
}

function compareRows(before: Subject, after: Subject): readonly (readonly Cell[])[] {
  const { labels } = before.catalogue;
  const angle = (value: number): string => degreesText(value, before.numbers);
  const both = (label: string, cellOf: (subject: Subject) => Cell): readonly Cell[] => [{ text: label }, cellOf(before), cellOf(after)];
  return [
    ...before.analysis.joints.map(({ id }) =>
      both(`${labels.operatingAngle}, ${before.nameOf(id)}`, (subject) => {
        const joint = subject.analysis.joints.find((one) => one.id === id);
        return resultCell(subject, joint?.operatingAngle, angle, joint?.verdict ?? null);
      }),
    ),
    both(labels.equivalentAngle, (subject) =>
      resultCell(subject, subject.analysis.cancellation.equivalentAngle, angle, subject.analysis.cancellation.verdict),
    ),
    both(labels.transmissionError, (subject) => resultCell(subject, subject.analysis.motion.transmissionErrorPeakToPeak, angle, null)),
    both(labels.drivenAcceleration, (subject) =>
      resultCell(subject, highestSpeed(subject)?.drivenAcceleration, subject.numbers.acceleration, null),
    ),
  ];
}

/** For every driveline reported both as found and after: each result side by side. */
export function compareSections(subjects: readonly Subject[]): readonly Section[] {
  return subjects.flatMap((after): Section[] => {
    const before = subjects.find((one) => one.driveline.id === after.driveline.id && one.gauged?.stage === "as-found");
    if (after.gauged?.stage !== "after" || !before) return [];
    const { labels } = after.catalogue;
    return [
      {
        title: after.words.headings.compare(nameOfDriveline(after.driveline, after.catalogue)),
        level: 1,
        blocks: [
          {
            kind: "table",
            caption: after.words.tables.compare,
            columns: [
              { label: after.words.tables.quantity, align: "start", weight: 2.4 },
              { label: labels.before, align: "start", weight: 2 },
              { label: labels.after, align: "start", weight: 2 },
            ],
            rows: compareRows(before, after),
            notes: [],
          },
        ],
      },
    ];
  });
}
