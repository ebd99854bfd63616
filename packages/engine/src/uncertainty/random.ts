import { randomNormal } from "d3-random";
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plusFromState } from "pure-rand/generator/xoroshiro128plus";

/** A source of deviates: every call gives the next one. Uniform sources give [0, 1). */
export type Deviates = () => number;

/** 2^32 over the golden ratio, an odd step that visits all 32-bit words. */
const GOLDEN_STEP = 0x9e3779b9;

/** Scatters a 32-bit word over all 32 bits, one to one (finalizer of MurmurHash3, A. Appleby, public domain). */
function scatter(word: number): number {
  let h = word;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return h ^ (h >>> 16);
}

/**
 * Uniform deviates in [0, 1) with 53 random bits, the same sequence for the same seed on every machine.
 * seed: any integer; only its low 32 bits count. Throws RangeError for a seed that is not an integer.
 * Source: xoroshiro128+ (Blackman and Vigna, "Scrambled linear pseudorandom number generators", ACM TOMS 47(4), 2021), by pure-rand.
 */
export function uniformDeviates(seed: number): Deviates {
  if (!Number.isInteger(seed)) throw new RangeError(`a seed must be an integer, got ${seed}`);
  // The generator is linear in its state, so that plain neighbouring seeds would give related sequences; scattered they do not.
  const generator = xoroshiro128plusFromState([1, 2, 3, 4].map((k) => scatter(seed + k * GOLDEN_STEP)));
  return () => uniformFloat64(generator);
}

/**
 * Normal deviates of mean 0 and standard deviation 1 from a uniform source.
 * They come in pairs (Marsaglia's polar method), so take one source of normal deviates per uniform source, not one per deviate.
 */
export const normalDeviates = (uniform: Deviates): Deviates => randomNormal.source(uniform)(0, 1);
