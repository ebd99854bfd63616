import type { PoseModel } from "../gauging/index.js";
import { symmetricInterval } from "../uncertainty/index.js";
import type { ShaftResult } from "./driveline-analysis.js";
import type { Estimate } from "./estimate.js";

/**
 * Inclination and heading of every shaft with their intervals. u is exact from the linear error law; the interval is that of the draws, whose shapes matter.
 * columns: draws of both numbers of each shaft in turn, reordered.
 */
export function poseEstimates(model: PoseModel, columns: readonly Float64Array[]): readonly ShaftResult[] {
  const estimate = (place: number, value: number, by: readonly number[]): Estimate => {
    const { low, high } = symmetricInterval(columns[place] as Float64Array);
    const u = Math.hypot(...model.sources.map((source, k) => (by[k] ?? 0) * source.u));
    return { value, u, low: Math.min(low, value), high: Math.max(high, value) };
  };
  return model.shafts.map((id, s) => {
    const inclination = model.inclination[s] ?? null;
    return {
      id,
      inclination: inclination === null ? null : estimate(2 * s, inclination, model.inclinationBy[s] ?? []),
      heading: estimate(2 * s + 1, model.heading[s] ?? 0, model.headingBy[s] ?? []),
    };
  });
}
