import { inverse, Matrix } from "ml-matrix";

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
  /** Sum of squares about a straight line. */
  readonly squares: number;
}

/** A column's cosine and sine at every sample. */
export interface Wave {
  readonly cosine: Float64Array;
  readonly sine: Float64Array;
}

/** Waves of so many cycles per turn at angles in rad. */
export function waveOf(angles: Float64Array, perTurn: number): Wave {
  const cosine = new Float64Array(angles.length);
  const sine = new Float64Array(angles.length);
  for (let n = 0; n < angles.length; n++) {
    const phase = perTurn * (angles[n] as number);
    cosine[n] = Math.cos(phase);
    sine[n] = Math.sin(phase);
  }
  return { cosine, sine };
}

const LEAST = 1e-10;

/**
 * Fits all orders at once by least squares, with an offset and a drift: orders that lie close share out what is theirs instead of each claiming it all.
 * channels: as many samples each as the waves. Source: JCGM 100:2008, H.3 (least squares and its covariance).
 */
export function fitBlock(channels: readonly Float64Array[], waves: readonly Wave[]): readonly ChannelFit[] {
  const length = channels[0]?.length ?? 0;
  const ones = new Float64Array(length).fill(1);
  const ramp = Float64Array.from({ length }, (_, n) => (2 * n) / Math.max(1, length - 1) - 1);
  const columns = [ones, ramp, ...waves.flatMap(({ cosine, sine }) => [cosine, sine])];
  const normal = Matrix.zeros(columns.length, columns.length);
  for (const [i, a] of columns.entries())
    for (let j = 0; j <= i; j++) {
      const product = dot(a, columns[j] as Float64Array);
      normal.set(i, j, product);
      normal.set(j, i, product);
    }
  // So little that no digit that counts changes, but two columns that happen to be one no longer stop the work: they share what is theirs.
  for (let i = 0; i < columns.length; i++) normal.set(i, i, normal.get(i, i) + LEAST * length);
  const covariance = inverse(normal);
  return channels.map((samples) => {
    const solution = covariance.mmul(Matrix.columnVector(columns.map((column) => dot(column, samples))));
    const amplitudes = waves.map((_, j): BlockAmplitude => {
      const i = 2 + 2 * j;
      return {
        cosine: solution.get(i, 0),
        sine: solution.get(i + 1, 0),
        unitCovariance: [covariance.get(i, i), covariance.get(i, i + 1), covariance.get(i + 1, i + 1)],
      };
    });
    return { amplitudes, residual: without(samples, columns, solution), squares: squaresAboutLine(samples, ramp) };
  });
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let n = 0; n < a.length; n++) sum += (a[n] as number) * (b[n] as number);
  return sum;
}

function without(samples: Float64Array, columns: readonly Float64Array[], solution: Matrix): Float64Array {
  const residual = samples.slice();
  for (const [j, column] of columns.entries()) {
    const factor = solution.get(j, 0);
    for (let n = 0; n < residual.length; n++) residual[n] = (residual[n] as number) - factor * (column[n] as number);
  }
  return residual;
}

/** The ramp is symmetric about 0, so that offset and drift do not mix. */
function squaresAboutLine(samples: Float64Array, ramp: Float64Array): number {
  let mean = 0;
  for (const x of samples) mean += x / samples.length;
  const slope = dot(samples, ramp) / dot(ramp, ramp);
  let squares = 0;
  for (let n = 0; n < samples.length; n++) squares += ((samples[n] as number) - mean - slope * (ramp[n] as number)) ** 2;
  return squares;
}
