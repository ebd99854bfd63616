import type { Estimate } from "@halfturn/engine/analysis";
import type { Block, Cell } from "./blocks.js";
import { degreesInterval, degreesText, toneOf } from "./estimates.js";
import { type AccelerationResult, accelerationsAtHighestSpeed, highestSpeed, needsCaution } from "./motion-results.js";
import type { Subject } from "./subject.js";
import { whyMotionUnknown } from "./why-not.js";

const NONE = "–";

function angleRow(subject: Subject, label: string, estimate: Estimate | null): readonly Cell[] {
  const { numbers, words } = subject;
  return [
    { text: label },
    { text: estimate ? degreesText(estimate.value, numbers) : whyMotionUnknown(subject) },
    { text: estimate ? degreesInterval(estimate, numbers) : NONE },
    { text: words.tables.noLimit },
    { text: NONE },
  ];
}

function verdictCell({ words, catalogue }: Subject, result: AccelerationResult): Cell {
  const { verdict } = result;
  if (verdict === null) return { text: NONE };
  const text = catalogue.labels.verdicts[verdict];
  return needsCaution(result) ? { text: `${text}, ${words.tables.caution}`, tone: "unsure" } : { text, tone: toneOf(verdict) };
}

function accelerationRow(subject: Subject, result: AccelerationResult): readonly Cell[] {
  const { numbers, words } = subject;
  const { estimate, limit, caution } = result;
  const limitText = limit === null ? words.tables.noLimit : words.tables.upTo(numbers.acceleration(limit));
  return [
    { text: result.quantity },
    { text: estimate ? numbers.acceleration(estimate.value) : whyMotionUnknown(subject) },
    { text: estimate ? numbers.accelerationInterval(estimate.low, estimate.high) : NONE },
    { text: caution === null ? limitText : words.tables.warnOver(numbers.acceleration(caution), limitText) },
    verdictCell(subject, result),
  ];
}

/** What the joints do to the motion: the swing of the driven end, and accelerations at the highest shaft speed against their limits. */
export function motionBlocks(subject: Subject): readonly Block[] {
  const { catalogue, words, analysis, numbers } = subject;
  const { labels } = catalogue;
  const speed = highestSpeed(subject);
  return [
    {
      kind: "table",
      caption: words.tables.motion,
      columns: [
        { label: words.tables.quantity, align: "start", weight: 2.6 },
        { label: words.tables.result, align: "end", weight: 1.6 },
        { label: labels.interval95, align: "end", weight: 2.1 },
        { label: labels.limit, align: "end", weight: 2 },
        { label: labels.verdict, align: "start", weight: 1.8 },
      ],
      rows: [
        angleRow(subject, labels.transmissionError, analysis.motion.transmissionErrorPeakToPeak),
        angleRow(subject, labels.secondOrder, analysis.motion.secondOrder),
        angleRow(subject, labels.fourthOrder, analysis.motion.fourthOrder),
        ...accelerationsAtHighestSpeed(subject).map((result) => accelerationRow(subject, result)),
      ],
      notes: [...(speed ? [words.tables.atSpeed(numbers.speed(speed.shaftSpeed))] : []), words.tables.singleAmplitude],
    },
  ];
}
