import type { DrivelineJson } from "@halfturn/casefile";
import type { LimitSet } from "@halfturn/engine/limits";
import { radiansToDegrees } from "@halfturn/engine/units";
import { angleIntervalOf, angleOf } from "./quantity-text.js";
import { table } from "./table.js";
import { benchVerdictText, verdictText } from "./verdict-text.js";
import type { View } from "./view.js";
import { wrap } from "./wrap.js";

/** Bench residual and equivalent angle closer than this need no explaining: it is below what any gauge tells apart. */
const SAME_DEG = 0.1;

/** What the joints leave uncancelled, the bench rule beside it, and why the two differ. */
export function cancellationLines(
  { joints, cancellation }: DrivelineJson,
  signs: readonly (1 | -1)[] | null,
  limits: LimitSet,
  view: View,
): readonly string[] {
  const { labels, numbers, explanations } = view.words;
  const { equivalentAngleDeg, benchResidualDeg } = cancellation;
  const angle = (quantity: DrivelineJson["cancellation"]["benchResidualDeg"]): readonly string[] => [
    angleOf(quantity, numbers, labels.notKnown),
    angleIntervalOf(quantity, numbers),
  ];
  const rows = [
    [
      labels.equivalentAngle,
      ...angle(equivalentAngleDeg),
      limitText(cancellation.equivalentMaximumDeg, view),
      verdictText(cancellation.verdict, view),
    ],
  ];
  if (benchResidualDeg !== null) {
    const target = limitText(radiansToDegrees(limits.benchMet.value), view);
    rows.push([labels.benchResidual, ...angle(benchResidualDeg), target, benchVerdictText(cancellation.benchVerdict, view)]);
  }
  const angles = joints.flatMap(({ operatingAngleDeg }) => (operatingAngleDeg === null ? [] : [operatingAngleDeg.value]));
  const sentence =
    equivalentAngleDeg !== null && Math.abs((benchResidualDeg?.value ?? Number.POSITIVE_INFINITY) - equivalentAngleDeg.value) > SAME_DEG
      ? [
          explanations.bench({
            anglesDeg: angles,
            signs,
            benchDeg: benchResidualDeg?.value ?? null,
            equivalentDeg: equivalentAngleDeg.value,
          }),
        ]
      : [];
  return [
    view.paint("strong", labels.cancellation),
    ...table(rows, ["left", "right"]),
    ...sentence.flatMap((text) => wrap(text, view.width, "  ")),
  ];
}

const limitText = (degrees: number, { words: { numbers, labels } }: View): string => labels.upTo(numbers.angle(degrees));
