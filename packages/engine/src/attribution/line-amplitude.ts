import type { Estimate } from "../analysis/estimate.js";
import type { BlockAmplitude } from "./block-fit.js";
import type { LineNoise } from "./residual-noise.js";

/** An order in one block with the noise around it. */
export interface NoisyBlock {
  readonly amplitude: BlockAmplitude;
  readonly noise: LineNoise;
}

/** Mean square of an order's amplitude over blocks, cleared of what noise adds, with its standard uncertainty; in the unit squared. May be below 0. */
export interface MeanSquare {
  readonly value: number;
  readonly u: number;
  /** Its variance is `atZero` where nothing is there, and more by `perSquare` times the true mean square. */
  readonly atZero: number;
  readonly perSquare: number;
  /** Of the noise, over all blocks. */
  readonly freedom: number;
  /** Squared amplitudes over their noise, summed: chi-squared of twice as many degrees of freedom as blocks where nothing but noise is there. */
  readonly noiseUnits: number;
  readonly blocks: number;
}

/** E|a|^2 = |A|^2 + tr C, and the variance of |a|^2 is 4 A'CA + 2 tr C^2 (moments of a normal vector, exact). */
export function meanSquareOf(blocks: readonly NoisyBlock[]): MeanSquare {
  let [value, variance, atZero, perSquare, freedom, noiseUnits] = [0, 0, 0, 0, 0, 0];
  for (const { amplitude, noise } of blocks) {
    const { cosine: a, sine: b, unitCovariance } = amplitude;
    const [aa, ab, bb] = unitCovariance.map((c) => c * noise.variance) as [number, number, number];
    const traceOfSquare = aa ** 2 + 2 * ab ** 2 + bb ** 2;
    value += (a * a + b * b - aa - bb) / blocks.length;
    // a and b carry the noise themselves: 4 a'Ca is too large by 4 tr C^2.
    variance += Math.max(4 * (a * a * aa + 2 * a * b * ab + b * b * bb) - 2 * traceOfSquare, 2 * traceOfSquare) / blocks.length ** 2;
    atZero += (2 * traceOfSquare) / blocks.length ** 2;
    perSquare += (2 * (aa + bb)) / blocks.length ** 2;
    freedom += noise.freedom;
    const determinant = aa * bb - ab * ab;
    noiseUnits += determinant > 0 ? (a * a * bb - 2 * a * b * ab + b * b * aa) / determinant : 0;
  }
  return { value, u: Math.sqrt(variance), atZero, perSquare, freedom, noiseUnits, blocks: blocks.length };
}

const BOTH_SIDES = 1.959964;

/** Quantile of Student's t from the normal one. Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.5, first term. */
const student = (z: number, freedom: number): number => z + (z ** 3 + z) / (4 * Math.max(1, freedom));

const root = (x: number): number => Math.sqrt(Math.max(0, x));

/**
 * Amplitude (half peak to peak; root mean square over the blocks) from its mean square, which stays meaningful at 0, with its 95 % interval: every true mean
 * square whose own spread makes what was read likely (E. B. Wilson, J. Am. Stat. Assoc. 22(158), 1927, for shares), since a reading that came out small would
 * else claim too small a spread. Where that reaches 0 the interval begins there.
 */
export function amplitudeOf({ value, u, atZero, perSquare, freedom }: MeanSquare): Estimate {
  const z = student(BOTH_SIDES, freedom);
  const middle = value + (z * z * perSquare) / 2;
  const reach = z * root((z * perSquare) ** 2 / 4 + perSquare * value + atZero);
  const amplitude = root(value);
  return {
    value: amplitude,
    // Half the spread added below the root lets u end at a finite value where the amplitude is nil.
    u: u === 0 ? 0 : u / (2 * Math.sqrt(amplitude ** 2 + u / 2)),
    low: Math.min(amplitude, root(middle - reach)),
    high: Math.max(amplitude, root(middle + reach)),
  };
}
