import { inverse, Matrix } from "ml-matrix";
import type { Wave } from "./waves.js";

/** Amplitude of one order in one block, in the channel's unit: `cosine` cos(order angle) + `sine` sin(order angle). */
export interface BlockAmplitude {
  readonly cosine: number;
  readonly sine: number;
  /** Covariance of the two for noise of variance 1: cosine, both, sine. */
  readonly unitCovariance: readonly [number, number, number];
}

/** What the fit of one channel in one block found. */
export interface ChannelFit {
  /** One per column. */
  readonly amplitudes: readonly BlockAmplitude[];
  readonly residual: Float64Array;
  /** Sums of squares: about a straight line, and of the residual. */
  readonly squares: number;
  readonly residualSquares: number;
}

const LEAST = 1e-10;

/**
 * Fits all orders at once by least squares, with an offset and a drift: orders that lie close share out what is theirs instead of each claiming it all.
 * channels: as many samples each as the waves. Source: JCGM 100:2008, H.3 (least squares and its covariance).
 */
export function fitBlock(channels: readonly Float64Array[], waves: readonly Wave[]): readonly ChannelFit[] {
  const length = channels[0]?.length ?? 0;
  const ones = new Float64Array(length).fill(1);
  const ramp = rampOf(length);
  const columns = [ones, ramp, ...waves.flatMap(({ cosine, sine }) => [cosine, sine])];
  const normal = productsOf(columns);
  // So little that no digit that counts changes, but two columns that happen to be one no longer stop the work: they share what is theirs.
  for (let i = 0; i < columns.length; i++) normal.set(i, i, normal.get(i, i) + LEAST * length);
  const covariance = inverse(normal);
  return channels.map((samples) => {
    const solution = covariance.mmul(Matrix.columnVector(productsWith(samples, columns, columns.length)));
    const amplitudes = waves.map((_, j): BlockAmplitude => {
      const i = 2 + 2 * j;
      return {
        cosine: solution.get(i, 0),
        sine: solution.get(i + 1, 0),
        unitCovariance: [covariance.get(i, i), covariance.get(i, i + 1), covariance.get(i + 1, i + 1)],
      };
    });
    const residual = without(samples, columns, solution);
    return { amplitudes, residual, squares: squaresAboutLine(samples, ramp), residualSquares: dot(residual, residual) };
  });
}

/** -1 to 1. */
function rampOf(length: number): Float64Array {
  const ramp = new Float64Array(length);
  for (let n = 0; n < length; n++) ramp[n] = (2 * n) / Math.max(1, length - 1) - 1;
  return ramp;
}

/** Of each column with each. */
function productsOf(columns: readonly Float64Array[]): Matrix {
  const normal = Matrix.zeros(columns.length, columns.length);
  for (const [i, column] of columns.entries()) {
    const products = productsWith(column, columns, i + 1);
    for (let j = 0; j <= i; j++) {
      normal.set(i, j, products[j] as number);
      normal.set(j, i, products[j] as number);
    }
  }
  return normal;
}

/** Products with the first `count` columns. Four at a time in one pass: four sums keep the processor busy where one would wait for itself. */
function productsWith(a: Float64Array, columns: readonly Float64Array[], count: number): Float64Array {
  const products = new Float64Array(count + 3);
  for (let j = 0; j < count; j += 4)
    fourProducts(a, columns[j] ?? a, columns[j + 1] ?? a, columns[j + 2] ?? a, columns[j + 3] ?? a, products.subarray(j, j + 4));
  return products.subarray(0, count);
}

function fourProducts(a: Float64Array, b: Float64Array, c: Float64Array, d: Float64Array, e: Float64Array, out: Float64Array): void {
  let p = 0;
  let q = 0;
  let r = 0;
  let s = 0;
  for (let n = 0; n < a.length; n++) {
    const x = a[n] as number;
    p += x * (b[n] as number);
    q += x * (c[n] as number);
    r += x * (d[n] as number);
    s += x * (e[n] as number);
  }
  out[0] = p;
  out[1] = q;
  out[2] = r;
  out[3] = s;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let n = 0; n < a.length; n++) sum += (a[n] as number) * (b[n] as number);
  return sum;
}

/** What the columns leave of the samples; the waves come in pairs, and so do offset and ramp. */
function without(samples: Float64Array, columns: readonly Float64Array[], solution: Matrix): Float64Array {
  const residual = samples.slice();
  for (let j = 0; j < columns.length; j += 2)
    takeAway(residual, columns[j] as Float64Array, solution.get(j, 0), columns[j + 1] as Float64Array, solution.get(j + 1, 0));
  return residual;
}

function takeAway(samples: Float64Array, a: Float64Array, timesA: number, b: Float64Array, timesB: number): void {
  for (let n = 0; n < samples.length; n++) samples[n] = (samples[n] as number) - timesA * (a[n] as number) - timesB * (b[n] as number);
}

/** The ramp is symmetric about 0, so that offset and drift do not mix. */
function squaresAboutLine(samples: Float64Array, ramp: Float64Array): number {
  let sum = 0;
  for (let n = 0; n < samples.length; n++) sum += samples[n] as number;
  const mean = sum / samples.length;
  const slope = dot(samples, ramp) / dot(ramp, ramp);
  let squares = 0;
  for (let n = 0; n < samples.length; n++) {
    const rest = (samples[n] as number) - mean - slope * (ramp[n] as number);
    squares += rest * rest;
  }
  return squares;
}
