import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { radiansToDegrees } from "@halfturn/engine/units";
import { type PlacedProblem, placed } from "../problems/index.js";
import type { Case, CaseLimits } from "../schema/case.js";

type LimitKey = Exclude<keyof CaseLimits, "source">;
/** An upper limit, the one that it has to reach at least, and what both are where the case is silent. */
type Pair = readonly [upper: LimitKey, lower: LimitKey, builtIn: readonly [upper: number, lower: number]];

const { jointAngle, minimumAngle, drivenAccelerationOver, drivenAccelerationWarn, benchAccepted, benchMet } = DEFAULT_LIMITS;
/** Degrees as a file writes them, without the rounding of the way there. */
const degrees = (limit: { readonly value: number }): number => Number(radiansToDegrees(limit.value as never).toFixed(9));

const PAIRS: readonly Pair[] = [
  ["drivenAccelerationOverRadS2", "drivenAccelerationWarnRadS2", [drivenAccelerationOver.value, drivenAccelerationWarn.value]],
  ["benchAcceptedDeg", "benchMetDeg", [degrees(benchAccepted), degrees(benchMet)]],
  ["crossMaximumDeg", "crossMinimumDeg", [degrees(jointAngle.cross), degrees(minimumAngle.cross)]],
  ["doubleCrossMaximumDeg", "doubleCrossMinimumDeg", [degrees(jointAngle["double-cross"]), degrees(minimumAngle["double-cross"])]],
  ["ballMaximumDeg", "ballMinimumDeg", [degrees(jointAngle.ball), degrees(minimumAngle.ball)]],
  ["flexibleMaximumDeg", "flexibleMinimumDeg", [degrees(jointAngle.flexible), degrees(minimumAngle.flexible)]],
];

/** Pairs of limits that leave no room between them, also where only one of a pair is the case's own. */
export const limitProblems = ({ limits }: Case): readonly PlacedProblem[] =>
  PAIRS.flatMap(([upper, lower, builtIn]) => {
    const own = [limits?.[upper], limits?.[lower]] as const;
    const [high, low] = [own[0] ?? builtIn[0], own[1] ?? builtIn[1]];
    if ((own[0] === undefined && own[1] === undefined) || high >= low) return [];
    // The problem stands where the file has something to correct.
    if (own[0] === undefined)
      return [
        placed(["limits", lower], "contradiction", { key: lower, relation: "at-most", other: upper, got: low, limit: high, builtIn: true }),
      ];
    const known = own[1] === undefined ? { builtIn: true as const } : {};
    return [
      placed(["limits", upper], "contradiction", { key: upper, relation: "at-least", other: lower, got: high, limit: low, ...known }),
    ];
  });
