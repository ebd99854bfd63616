import type { SampleReader } from "./sample-reader.js";

/** Stop band 80 dB down, and a pass band as even: amplitudes stay right to 1 part in 10,000. */
const ATTENUATION = 80;

/**
 * Fewer samples: every `factor`-th (a whole number from 1) of a low-passed signal. Below a quarter of the new rate amplitudes and phases are kept; what lay above
 * three quarters of it is gone; between the two it is weakened or folds back onto itself, but not below a quarter. As a reader it holds nothing but the filter.
 * Its first and last samples lie half a filter inside the recording's.
 * Source: J. F. Kaiser, "Nonrecursive digital filter design using the I0-sinh window function", Proc. IEEE ISCAS 1974.
 */
export function decimated(reader: SampleReader, factor: number): SampleReader {
  if (!(Number.isInteger(factor) && factor >= 1)) throw new RangeError(`a factor is a whole number from 1, got ${factor}`);
  if (factor === 1) return reader;
  const filter = lowPass(factor);
  const taps = filter.length;
  const length = reader.length < taps ? 0 : Math.floor((reader.length - taps) / factor) + 1;
  return {
    rate: reader.rate / factor,
    start: reader.start + (taps - 1) / 2 / reader.rate,
    length,
    read: (first, out) => {
      if (out.length === 0) return;
      const raw = new Float64Array((out.length - 1) * factor + taps);
      reader.read(first * factor, raw);
      for (let k = 0; k < out.length; k++) {
        let sum = 0;
        const from = k * factor;
        for (let i = 0; i < taps; i++) sum += (filter[i] as number) * (raw[from + i] as number);
        out[k] = sum;
      }
    },
  };
}

/** Odd, symmetric, of sum 1: a sinc that ends at half the new rate, under a Kaiser window whose transition is half the new rate wide. */
function lowPass(factor: number): Float64Array {
  const half = Math.ceil(((ATTENUATION - 7.95) / (2.285 * Math.PI)) * factor * 0.5);
  const beta = 0.1102 * (ATTENUATION - 8.7);
  const filter = Float64Array.from({ length: 2 * half + 1 }, (_, i) => {
    const x = (Math.PI * (i - half)) / factor;
    const sinc = x === 0 ? 1 : Math.sin(x) / x;
    return sinc * bessel(beta * Math.sqrt(1 - ((i - half) / half) ** 2));
  });
  const sum = filter.reduce((a, b) => a + b, 0);
  return filter.map((tap) => tap / sum);
}

/** Modified Bessel function of the first kind, order 0, by its power series. */
function bessel(x: number): number {
  let [term, sum] = [1, 1];
  for (let k = 1; term > 1e-17 * sum; k++) {
    term *= (x / 2 / k) ** 2;
    sum += term;
  }
  return sum;
}
