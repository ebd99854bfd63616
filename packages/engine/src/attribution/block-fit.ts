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
  const products = productsOf([...columns, ...channels], columns);
  // So little that no digit that counts changes, but two columns that happen to be one no longer stop the work: they share what is theirs.
  const covariance = inverse(symmetric(columns.length, (i, j) => products(i, j) + (i === j ? LEAST * length : 0)));
  return channels.map((samples, channel) => {
    const solution = covariance.mmul(Matrix.columnVector(columns.map((_, j) => products(columns.length + channel, j))));
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

function symmetric(size: number, entry: (i: number, j: number) => number): Matrix {
  const matrix = Matrix.zeros(size, size);
  for (let i = 0; i < size; i++)
    for (let j = 0; j <= i; j++) {
      matrix.set(i, j, entry(i, j));
      matrix.set(j, i, entry(i, j));
    }
  return matrix;
}

/** Products of row i with column j, for the columns up to the row's own number. Eight at a time in one pass: eight sums keep the processor busy where one would wait for itself. */
function productsOf(rows: readonly Float64Array[], columns: readonly Float64Array[]): (i: number, j: number) => number {
  const width = columns.length + 3;
  const products = new Float64Array((rows.length + 1) * width);
  for (let i = 0; i < rows.length; i += 2) {
    const first = rows[i] as Float64Array;
    const pair = [first, rows[i + 1] ?? first] as const;
    for (let j = 0; j < Math.min(columns.length, i + 2); j += 4) {
      const four = [columns[j] ?? first, columns[j + 1] ?? first, columns[j + 2] ?? first, columns[j + 3] ?? first] as const;
      eightProducts(pair, four, products.subarray(i * width + j), width);
    }
  }
  return (i, j) => products[i * width + j] as number;
}

/** Writes two rows of four. */
function eightProducts(
  [x, y]: readonly [Float64Array, Float64Array],
  [a, b, c, d]: Four<Float64Array>,
  out: Float64Array,
  width: number,
): void {
  let xa = 0;
  let xb = 0;
  let xc = 0;
  let xd = 0;
  let ya = 0;
  let yb = 0;
  let yc = 0;
  let yd = 0;
  for (let n = 0; n < x.length; n++) {
    const xn = x[n] as number;
    const yn = y[n] as number;
    const an = a[n] as number;
    const bn = b[n] as number;
    const cn = c[n] as number;
    const dn = d[n] as number;
    xa += xn * an;
    xb += xn * bn;
    xc += xn * cn;
    xd += xn * dn;
    ya += yn * an;
    yb += yn * bn;
    yc += yn * cn;
    yd += yn * dn;
  }
  out.set([xa, xb, xc, xd]);
  out.set([ya, yb, yc, yd], width);
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let n = 0; n < a.length; n++) sum += (a[n] as number) * (b[n] as number);
  return sum;
}

/** What the columns leave of the samples; four at a time, since every pass fetches the samples anew. */
function without(samples: Float64Array, columns: readonly Float64Array[], solution: Matrix): Float64Array {
  const residual = samples.slice();
  const times = (j: number): number => (j < columns.length ? solution.get(j, 0) : 0);
  for (let j = 0; j < columns.length; j += 4) {
    const [a = samples, b = samples, c = samples, d = samples] = columns.slice(j, j + 4);
    takeAway(residual, [a, b, c, d], [times(j), times(j + 1), times(j + 2), times(j + 3)]);
  }
  return residual;
}

type Four<T> = readonly [T, T, T, T];

function takeAway(samples: Float64Array, [a, b, c, d]: Four<Float64Array>, [ta, tb, tc, td]: Four<number>): void {
  for (let n = 0; n < samples.length; n++)
    samples[n] = (samples[n] as number) - ta * (a[n] as number) - tb * (b[n] as number) - tc * (c[n] as number) - td * (d[n] as number);
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
