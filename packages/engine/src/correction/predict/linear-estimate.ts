import type { Estimate } from "../../analysis/index.js";
import type { ErrorSource } from "../../gauging/index.js";
import { normalDeviates, symmetricInterval, uniformDeviates } from "../../uncertainty/index.js";

/** A quantity known by its best value and its change per unit of each source: u by the linear law, 95 % interval by draws of the sources' shapes. */
export function linearEstimate(
  value: number,
  by: readonly number[],
  sources: readonly ErrorSource[],
  { draws, seed }: { readonly draws: number; readonly seed: number },
): Estimate {
  const felt = sources.flatMap(({ u, shape }, k) =>
    (by[k] ?? 0) * u === 0 ? [] : [{ size: (by[k] as number) * u, normal: shape === "normal" }],
  );
  if (felt.length === 0) return { value, u: 0, low: value, high: value };
  const uniform = uniformDeviates(seed);
  const normal = normalDeviates(uniform);
  const sample = new Float64Array(draws);
  for (let draw = 0; draw < draws; draw++) {
    let sum = value;
    for (const source of felt) sum += source.size * (source.normal ? normal() : Math.sqrt(3) * (2 * uniform() - 1));
    sample[draw] = sum;
  }
  const { low, high } = symmetricInterval(sample);
  return { value, u: Math.hypot(...felt.map(({ size }) => size)), low: Math.min(low, value), high: Math.max(high, value) };
}
