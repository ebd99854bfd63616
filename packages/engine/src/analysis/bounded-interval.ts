import { DEFAULT_COVERAGE, type Interval, quantiles } from "../uncertainty/index.js";
import type { PlaneCovariance } from "./simulate-chain.js";

/** 95 % points of chi-squared with one and two degrees of freedom. */
const CHI_SQUARED_1 = 3.841458820694124;
const CHI_SQUARED_2 = 5.991464547107979;
/** A variance this small against the other one is rounding: the vector then varies along a line, or not at all. */
const NO_VARIANCE = 1e-20;

/** Whether zero lies in the 95 % region (an ellipse) about a plane vector. Without any variance only the vector zero itself does. */
export function regionIncludesZero(x: number, y: number, { xx, xy, yy }: PlaneCovariance): boolean {
  const middle = (xx + yy) / 2;
  const spread = Math.hypot((xx - yy) / 2, xy);
  const direction = Math.atan2(xy, (xx - yy) / 2) / 2;
  const c = Math.cos(direction);
  const s = Math.sin(direction);
  const along = x * c + y * s;
  const across = y * c - x * s;
  const size = x * x + y * y;
  const least = NO_VARIANCE * Math.max(middle, size);
  const terms = [
    { distance: along, variance: middle + spread },
    { distance: across, variance: middle - spread },
  ];
  const varying = terms.filter(({ variance }) => variance > least);
  const fixed = terms.filter(({ variance }) => variance <= least);
  if (fixed.some(({ distance }) => distance * distance > least)) return false;
  if (varying.length === 0) return size === 0;
  const distance = varying.reduce((sum, term) => sum + (term.distance * term.distance) / term.variance, 0);
  return distance <= (varying.length === 1 ? CHI_SQUARED_1 : CHI_SQUARED_2);
}

/**
 * 95 % interval of a quantity bounded by zero: the length of a vector that is known with errors.
 *
 * Where zero is a plausible vector, [0, one-sided bound]: the 95 % point of the draws, moved on by as much as the 97.5 % point of the measuring errors alone lies
 * beyond their 95 % point. With measuring errors alone that is the upper end which the interval would have in any case; letting what was read choose between
 * that end and a lower one would hold a truth of 2 to 4 u in 90 to 92 cases of 100 only (Feldman and Cousins, "Unified approach to the classical statistical
 * analysis of small signals", Phys. Rev. D 57, 1998; figures by simulation). Errors of origin `assumed` ask for no such care.
 *
 * Elsewhere the symmetric interval of the draws, less twice the bias that measuring errors give a
 * length: errors across a vector can only lengthen it, once in the reading and once more in the draws about the reading (median bias correction after
 * B. Efron, "Nonparametric standard errors and confidence intervals", Can. J. Stat. 9, 1981). Errors of origin `assumed` need none, since they
 * scatter the truth about the value and not the value about the truth.
 *
 * draws: reordered. measured: draws with the measuring errors alone, reordered. All >= 0, on one scale.
 */
export function boundedInterval(value: number, includesZero: boolean, draws: Float64Array, measured: Float64Array): Interval {
  const tail = (1 - DEFAULT_COVERAGE) / 2;
  if (includesZero) {
    const [bound] = quantiles(draws, [DEFAULT_COVERAGE]) as [number];
    const [nearer, farther] = quantiles(measured, [DEFAULT_COVERAGE, 1 - tail]) as [number, number];
    return { low: 0, high: Math.max(value, bound + farther - nearer) };
  }
  const [low, high] = quantiles(draws, [tail, 1 - tail]) as [number, number];
  const [median] = quantiles(measured, [0.5]) as [number];
  const bias = 2 * (median - value);
  return { low: Math.max(0, Math.min(value, low - bias)), high: Math.max(value, high - bias) };
}
