/** Cosine-sum windows: w(n) = sum over k of (-1)^k a_k cos(2 pi k n / N). */
const COEFFICIENTS = {
  boxcar: [1],
  hann: [0.5, 0.5],
  hamming: [0.54, 0.46],
  blackman: [0.42, 0.5, 0.08],
  "blackman-harris": [0.35875, 0.48829, 0.14128, 0.01168],
  nuttall: [0.3635819, 0.4891775, 0.1365995, 0.0106411],
  flattop: [0.21557895, 0.41663158, 0.277263158, 0.083578947, 0.006947368],
} as const satisfies Readonly<Record<string, readonly number[]>>;

export type WindowName = keyof typeof COEFFICIENTS;

export const WINDOW_NAMES: readonly WindowName[] = Object.keys(COEFFICIENTS) as WindowName[];

/** What a window does to a spectrum. */
export interface WindowFigures {
  /** Mean of the window: a tone's line is that much too small before it is scaled. */
  readonly coherentGain: number;
  /** Equivalent noise bandwidth in lines, >= 1. */
  readonly noiseBandwidth: number;
  /** How much lower a tone midway between two lines reads, in dB, >= 0. */
  readonly scallopLoss: number;
}

/**
 * Periodic window of `length` samples (>= 1), dimensionless, about 1 at its middle: a period of the sequence that the transform repeats.
 * A periodic Hann window has a noise bandwidth of exactly 1.5 lines; the symmetric one, made for filters, has not.
 * Throws RangeError for a length that is no whole number from 1.
 * Source: F. J. Harris, "On the use of windows for harmonic analysis with the discrete Fourier transform", Proc. IEEE 66(1), 1978;
 * Blackman-Harris: 4-term, -92 dB; Nuttall: 4-term with continuous first derivative (A. H. Nuttall, IEEE Trans. ASSP 29(1), 1981, from memory).
 */
export function windowSamples(name: WindowName, length: number): Float64Array {
  if (!(Number.isInteger(length) && length >= 1)) throw new RangeError(`a window has a whole number of samples from 1, got ${length}`);
  const terms: readonly number[] = COEFFICIENTS[name];
  const window = new Float64Array(length);
  for (let k = 0; k < terms.length; k++) {
    const a = (k % 2 === 0 ? 1 : -1) * (terms[k] as number);
    for (let n = 0; n < length; n++) window[n] = (window[n] as number) + a * Math.cos((2 * Math.PI * k * n) / length);
  }
  return window;
}

/** Sum and sum of squares of a window: what amplitudes and densities are divided by. */
export function windowSums(window: Float64Array): { readonly sum: number; readonly squares: number } {
  let sum = 0;
  let squares = 0;
  for (const w of window) {
    sum += w;
    squares += w * w;
  }
  return { sum, squares };
}

/** Coherent gain, noise bandwidth and scallop loss of a window's samples. Source: F. J. Harris, Proc. IEEE 66(1), 1978, section IV. */
export function windowFigures(window: Float64Array): WindowFigures {
  const { sum, squares } = windowSums(window);
  let re = 0;
  let im = 0;
  for (const [n, w] of window.entries()) {
    const halfLine = (Math.PI * n) / window.length;
    re += w * Math.cos(halfLine);
    im += w * Math.sin(halfLine);
  }
  return {
    coherentGain: sum / window.length,
    noiseBandwidth: (window.length * squares) / sum ** 2,
    scallopLoss: -20 * Math.log10(Math.hypot(re, im) / Math.abs(sum)),
  };
}
