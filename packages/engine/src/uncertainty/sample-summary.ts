import { DEFAULT_COVERAGE, type Interval } from "./interval.js";
import { shortestInterval, symmetricInterval } from "./quantile.js";

/** Mean and standard deviation (divisor n - 1) of a sample, in its unit. */
export interface Moments {
  readonly mean: number;
  readonly standardDeviation: number;
}

/** What a sample of an output quantity says of it: mean and standard deviation as estimate and standard uncertainty, and both coverage intervals. */
export interface SampleSummary extends Moments {
  readonly symmetric: Interval;
  readonly shortest: Interval;
}

/** Mean and standard deviation of a sample of two values or more, in two passes so that a large mean costs no digits. Source: JCGM 101:2008, 7.6. */
export function momentsOf(sample: Float64Array): Moments {
  let sum = 0;
  for (const value of sample) sum += value;
  const mean = sum / sample.length;
  let squares = 0;
  for (const value of sample) squares += (value - mean) ** 2;
  return { mean, standardDeviation: Math.sqrt(squares / (sample.length - 1)) };
}

/** Summary of a sample of finite values; reorders it in place. Throws RangeError when the sample is too small for the coverage. */
export function summariseSample(sample: Float64Array, coverage: number = DEFAULT_COVERAGE): SampleSummary {
  return { ...momentsOf(sample), symmetric: symmetricInterval(sample, coverage), shortest: shortestInterval(sample, coverage) };
}
