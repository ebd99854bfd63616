import type { PoseModel } from "../gauging/index.js";
import { symmetricInterval, uniformDeviates } from "../uncertainty/index.js";
import type { ShaftResult } from "./driveline-analysis.js";
import type { Estimate } from "./estimate.js";
import { poseDraws } from "./pose-draws.js";

/** The law is linear and its shapes are simple: more draws would not move an end of an interval by a hundredth of u. */
const POSE_DRAWS = 50_000;

/** Inclination and heading of every shaft with their intervals. u is exact from the linear error law; the interval is that of the draws, whose shapes matter. */
export function poseEstimates(model: PoseModel, options: { readonly draws: number; readonly seed: number }): readonly ShaftResult[] {
  const next = poseDraws(model, uniformDeviates(options.seed), "all");
  const draws = Math.min(options.draws, POSE_DRAWS);
  const columns = Array.from({ length: 2 * model.shafts.length }, () => new Float64Array(draws));
  for (let draw = 0; draw < draws; draw++) {
    const drawn = next();
    for (let place = 0; place < drawn.length; place++) (columns[place] as Float64Array)[draw] = drawn[place] as number;
  }
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
