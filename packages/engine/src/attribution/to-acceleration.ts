import type { RecordedChannel } from "./input.js";
import type { NoisyBlock } from "./line-amplitude.js";

/** How often a quantity is differentiated with respect to time to be an acceleration; a sound never is one. */
export const DERIVATIVES: { readonly [Quantity in RecordedChannel["quantity"]]: 0 | 1 | 2 } = {
  acceleration: 0,
  velocity: 1,
  displacement: 2,
  sound: 0,
};

/**
 * An order in one block as an acceleration: differentiated once or twice at its middle frequency (Hz), which turns a cos + b sin into w (b cos - a sin), w = 2 pi f.
 * Differentiating the samples would lift the noise above the orders with the square of its frequency; an order's own frequency is known.
 */
export function asAcceleration({ amplitude, noise }: NoisyBlock, frequency: number, times: 0 | 1 | 2): NoisyBlock {
  if (times === 0) return { amplitude, noise };
  const w = 2 * Math.PI * frequency;
  const { cosine, sine, unitCovariance } = amplitude;
  const [aa, ab, bb] = unitCovariance;
  const once: NoisyBlock = {
    amplitude: { ...amplitude, cosine: w * sine, sine: -w * cosine, unitCovariance: [bb, -ab, aa] },
    noise: { ...noise, variance: w * w * noise.variance },
  };
  return times === 1 ? once : asAcceleration(once, frequency, 1);
}
