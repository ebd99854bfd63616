import type { LinearFit } from "./linear-fit.js";
import type { Observation } from "./observation.js";

/**
 * How many standard uncertainties a contrast of the readings may stray before they contradict one another.
 * Chosen by simulation with rectangular, bounded errors and real rounding (docs/verification.md): false alarms stay under 2 % of clean gaugings.
 */
export const CRITICAL_CONTRAST = 3.25;

/** A contrast that the fit leaves less than this of cannot be tested. */
export const LEAST_REDUNDANCY = 1e-6;

/** Whether two readings could stand in each other's row: of one kind and of different shafts. */
export function canSwap(a: Observation, b: Observation): boolean {
  if (a.kind === "absolute" && b.kind === "absolute") return a.reading.shaft !== b.reading.shaft;
  if (a.kind === "difference" && b.kind === "difference") return a.reading.from !== b.reading.from || a.reading.to !== b.reading.to;
  return false;
}

/** |c . r| / sqrt(c . R c) for c = e_a/u_a, or e_a/u_a - e_b/u_b; 0 where the fit has nothing to test it with. */
function contrast(fit: LinearFit, observations: readonly Observation[], a: number, b: number | null): number {
  const at = (i: number, j: number): number => fit.residualMaker[i]?.[j] ?? 0;
  const r = (i: number): number => fit.residuals[i] ?? 0;
  if (b === null) return at(a, a) < LEAST_REDUNDANCY ? 0 : Math.abs(r(a)) / Math.sqrt(at(a, a));
  const ca = 1 / (observations[a] as Observation).u;
  const cb = 1 / (observations[b] as Observation).u;
  const variance = ca * ca * at(a, a) + cb * cb * at(b, b) - 2 * ca * cb * at(a, b);
  return variance < LEAST_REDUNDANCY * (ca * ca + cb * cb) ? 0 : Math.abs(ca * r(a) - cb * r(b)) / Math.sqrt(variance);
}

/**
 * The largest standardised contrast between the readings, in standard uncertainties, >= 0: over every single reading (which also stands for a wrong
 * lower end, a wrong side and a difference that was not zeroed) and over every pair that can be swapped.
 * Each is the likelihood ratio of that slip, of any size, against none.
 * Source: W. Baarda, A Testing Procedure for Use in Geodetic Networks, Delft 1968 (w-test, data snooping; from memory).
 */
export function largestContrast(fit: LinearFit, observations: readonly Observation[]): number {
  let largest = 0;
  observations.forEach((a, i) => {
    largest = Math.max(largest, contrast(fit, observations, i, null));
    for (let j = 0; j < i; j++) {
      if (canSwap(a, observations[j] as Observation)) largest = Math.max(largest, contrast(fit, observations, i, j));
    }
  });
  return largest;
}
