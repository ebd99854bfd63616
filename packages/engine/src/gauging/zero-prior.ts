import { degreesToRadians } from "../units/index.js";
import type { Gauging } from "./gauging.js";
import { fitLinear, type LinearFit } from "./linear-fit.js";
import { type Observation, rectangularSource, totalU, zeroIndex } from "./observation.js";

/** Half width within which the zero of a gauge lies that nobody has checked (common practice, no source). */
export const UNCHECKED_ZERO = degreesToRadians(0.3);
/** Half width beyond which a zero is doubted even though the readings tell it (common practice, no source). It takes no part in any estimate. */
export const BELIEVABLE_ZERO = degreesToRadians(1);

/** The equation zero = 0 within a half width, in radians. */
function zeroWithin(halfWidth: number, origin: "measured" | "assumed", path: string, width: number, zero: number): Observation {
  const sources = [rectangularSource(path, "zero", halfWidth, origin)];
  const row = Array.from({ length: width }, (_, k) => (k === zero ? 1 : 0));
  return { kind: "zero-prior", row, value: 0, sources, u: totalU(sources), path };
}

const pathOfGauge = (gauging: Gauging): string => `${gauging.path}.gauge`;
const widthOf = (observations: readonly Observation[]): number => observations[0]?.row.length ?? 0;

/** Whether the readings need a belief about the zero: it stands in one of them and they do not tell it. */
export const isZeroOpen = (observations: readonly Observation[], shafts: readonly string[]): boolean =>
  observations.some(({ kind }) => kind === "absolute") && !fitLinear(observations).known[zeroIndex(shafts)];

/**
 * The observations that the estimate rests on: where the zero is open, they are joined by zero = 0 within the accuracy of a gauge whose error is
 * common to all placings, else within `UNCHECKED_ZERO`. Where the readings tell the zero, nothing is assumed, so that exact readings give exact shafts.
 */
export function withAssumedZero(observations: readonly Observation[], gauging: Gauging, shafts: readonly string[]): readonly Observation[] {
  if (!isZeroOpen(observations, shafts)) return observations;
  const { common, accuracy } = gauging.gauge;
  const [halfWidth, origin] = common ? [accuracy, "measured" as const] : [UNCHECKED_ZERO, "assumed" as const];
  return [...observations, zeroWithin(halfWidth, origin, pathOfGauge(gauging), widthOf(observations), zeroIndex(shafts))];
}

/**
 * The observations that contradictions are looked for in: where the readings tell the zero, joined by a zero within `BELIEVABLE_ZERO`, so that one of
 * several degrees stands out; where they do not, by the assumed zero, against which the explanations are weighed.
 */
export function withBelievableZero(
  observations: readonly Observation[],
  gauging: Gauging,
  shafts: readonly string[],
): readonly Observation[] {
  if (isZeroOpen(observations, shafts)) return withAssumedZero(observations, gauging, shafts);
  return [...observations, zeroWithin(BELIEVABLE_ZERO, "assumed", pathOfGauge(gauging), widthOf(observations), zeroIndex(shafts))];
}

/** The fit that the estimate rests on. Needs at least one observation. */
export const fitWithAssumedZero = (observations: readonly Observation[], gauging: Gauging, shafts: readonly string[]): LinearFit =>
  fitLinear(withAssumedZero(observations, gauging, shafts));
