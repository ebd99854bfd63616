import type { CaseLimits } from "@halfturn/casefile";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { fromSi, type Radians } from "@halfturn/engine/units";
import type { Bounds } from "../../measure/read-measure.js";
import { atLeast, atMost, BOUNDS } from "./bounds.js";

export type LimitKey = Exclude<keyof CaseLimits, "source">;

/** What a maker's sheet states most often comes first. */
export const COMMON_LIMITS = ["crossMaximumDeg", "crossMinimumDeg", "equivalentMaximumDeg"] as const;
export const ACCELERATION_LIMITS = [
  "jointAccelerationRadS2",
  "drivenAccelerationWarnRadS2",
  "drivenAccelerationOverRadS2",
  "inertiaDriveRadS2",
  "inertiaCoastRadS2",
] as const;
export const OTHER_JOINT_LIMITS = [
  "doubleCrossMaximumDeg",
  "doubleCrossMinimumDeg",
  "ballMaximumDeg",
  "ballMinimumDeg",
  "flexibleMaximumDeg",
  "flexibleMinimumDeg",
] as const;
export const BENCH_LIMITS = ["benchMetDeg", "benchAcceptedDeg"] as const;

const DECIMALS = 9;
/** Degrees as a file writes them, without the rounding of the way there. */
const degrees = ({ value }: { readonly value: Radians }): number => Number(fromSi(value, "deg").toFixed(DECIMALS));
const { jointAngle, minimumAngle, ...others } = DEFAULT_LIMITS;

const BUILT_IN: Readonly<Record<LimitKey, number>> = {
  jointAccelerationRadS2: others.jointAcceleration.value,
  crossMaximumDeg: degrees(jointAngle.cross),
  doubleCrossMaximumDeg: degrees(jointAngle["double-cross"]),
  ballMaximumDeg: degrees(jointAngle.ball),
  flexibleMaximumDeg: degrees(jointAngle.flexible),
  crossMinimumDeg: degrees(minimumAngle.cross),
  doubleCrossMinimumDeg: degrees(minimumAngle["double-cross"]),
  ballMinimumDeg: degrees(minimumAngle.ball),
  flexibleMinimumDeg: degrees(minimumAngle.flexible),
  equivalentMaximumDeg: degrees(others.equivalentAngle),
  drivenAccelerationWarnRadS2: others.drivenAccelerationWarn.value,
  drivenAccelerationOverRadS2: others.drivenAccelerationOver.value,
  inertiaDriveRadS2: others.inertiaDrive.value,
  inertiaCoastRadS2: others.inertiaCoast.value,
  benchMetDeg: degrees(others.benchMet),
  benchAcceptedDeg: degrees(others.benchAccepted),
};

/** What holds where the case says nothing, in the file's unit. */
export const builtInLimit = (key: LimitKey): number => BUILT_IN[key];

/** Upper limits, each with the one that it has to reach at least. */
const PAIRS: readonly (readonly [upper: LimitKey, lower: LimitKey])[] = [
  ["crossMaximumDeg", "crossMinimumDeg"],
  ["doubleCrossMaximumDeg", "doubleCrossMinimumDeg"],
  ["ballMaximumDeg", "ballMinimumDeg"],
  ["flexibleMaximumDeg", "flexibleMinimumDeg"],
  ["drivenAccelerationOverRadS2", "drivenAccelerationWarnRadS2"],
  ["benchAcceptedDeg", "benchMetDeg"],
];

/** What a limit may be beside the others, whether those are the case's own or built in. */
export function limitBounds(key: LimitKey, limits: CaseLimits): Bounds {
  const own: Bounds = key.endsWith("Deg") ? BOUNDS.magnitude : BOUNDS.acceleration;
  const inForce = (other: LimitKey): number => limits[other] ?? BUILT_IN[other];
  return PAIRS.reduce<Bounds>((bounds, [upper, lower]) => {
    if (key === upper) return atLeast(bounds, inForce(lower));
    return key === lower ? atMost(bounds, inForce(upper)) : bounds;
  }, own);
}
