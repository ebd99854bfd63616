import { benchSigns } from "@halfturn/engine/kinematics";
import { type Radians, radiansToDegrees } from "@halfturn/engine/units";
import type { Block, Cell } from "./blocks.js";
import { degreesInterval, degreesText, toneOf } from "./estimates.js";
import type { Subject } from "./subject.js";
import { whyMotionUnknown } from "./why-not.js";

const toDegrees = (angle: number): number => radiansToDegrees(angle as Radians);

function whyNoBench(subject: Subject): string {
  const { whyNot } = subject.words;
  const { driveline } = subject.input;
  if (driveline.joints.some((joint) => joint.kind !== "cross")) return whyNot.benchNotCross;
  return benchSigns(driveline) === null ? whyNot.benchPhasing : whyNot.benchPlane;
}

function equivalentRow(subject: Subject): readonly Cell[] {
  const { numbers, catalogue, words, analysis } = subject;
  const { equivalentAngle, equivalentMaximum, verdict } = analysis.cancellation;
  return [
    { text: catalogue.labels.equivalentAngle },
    { text: equivalentAngle ? degreesText(equivalentAngle.value, numbers) : whyMotionUnknown(subject) },
    { text: equivalentAngle ? degreesInterval(equivalentAngle, numbers) : "–" },
    { text: words.tables.upTo(degreesText(equivalentMaximum, numbers)) },
    { text: catalogue.labels.verdicts[verdict], tone: toneOf(verdict) },
  ];
}

function benchRow(subject: Subject): readonly Cell[] {
  const { numbers, catalogue, words, analysis, input } = subject;
  const { benchResidual, benchVerdict } = analysis.cancellation;
  return [
    { text: catalogue.labels.benchResidual },
    { text: benchResidual ? degreesText(benchResidual.value, numbers) : whyNoBench(subject) },
    { text: benchResidual ? degreesInterval(benchResidual, numbers) : "–" },
    {
      text: words.tables.benchLimit(
        degreesText(input.limits.benchMet.value, numbers),
        degreesText(input.limits.benchAccepted.value, numbers),
      ),
    },
    {
      text:
        benchVerdict && !analysis.withheld
          ? catalogue.labels.benchVerdicts[benchVerdict]
          : analysis.withheld
            ? catalogue.labels.verdicts.withheld
            : "–",
    },
  ];
}

function explanation({ analysis, catalogue, input }: Subject): readonly string[] {
  const { equivalentAngle, benchResidual } = analysis.cancellation;
  if (!equivalentAngle) return [];
  const angles = analysis.joints.map((joint) => joint.operatingAngle);
  return [
    catalogue.explanations.bench({
      anglesDeg: angles.every((angle) => angle !== null) ? angles.map((angle) => toDegrees(angle.value)) : [],
      signs: benchSigns(input.driveline),
      benchDeg: benchResidual ? toDegrees(benchResidual.value) : null,
      equivalentDeg: toDegrees(equivalentAngle.value),
    }),
  ];
}

/** The exact answer with the bench rule beside it, and in a sentence why the two differ. */
export function cancellationBlocks(subject: Subject): readonly Block[] {
  const { catalogue, words, analysis, nameOf } = subject;
  const { labels, explanations } = catalogue;
  const best = Object.entries(analysis.cancellation.bestPhasing).map(([section, phasing]) =>
    explanations.bestPhasing(nameOf(section), toDegrees(phasing)),
  );
  return [
    {
      kind: "table",
      caption: words.tables.cancellation,
      columns: [
        { label: words.tables.quantity, align: "start", weight: 2 },
        { label: words.tables.result, align: "end", weight: 1.6 },
        { label: labels.interval95, align: "end", weight: 2 },
        { label: labels.limit, align: "end", weight: 1.6 },
        { label: labels.verdict, align: "start", weight: 2 },
      ],
      rows: [equivalentRow(subject), benchRow(subject)],
      notes: [],
    },
    ...[...explanation(subject), ...best].map((text) => ({ kind: "paragraph" as const, text })),
  ];
}
