import type { SampleReader } from "./sample-reader.js";

/** Stop band 80 dB down, and a pass band as even: amplitudes stay right to 1 part in 10,000. */
const ATTENUATION = 80;

/**
 * Fewer samples: every `factor`-th (a whole number from 1) of a low-passed signal. Below a quarter of the new rate amplitudes and phases are kept; what lay above
 * three quarters of it is gone; between the two it is weakened or folds back onto itself, but not below a quarter. As a reader it holds the filter and room for what was last asked.
 * Its first and last samples lie half a filter inside the recording's.
 * Source: J. F. Kaiser, "Nonrecursive digital filter design using the I0-sinh window function", Proc. IEEE ISCAS 1974.
 */
export function decimated(reader: SampleReader, factor: number): SampleReader {
  if (!(Number.isInteger(factor) && factor >= 1)) throw new RangeError(`a factor is a whole number from 1, got ${factor}`);
  if (factor === 1) return reader;
  const taps = lowPass(factor);
  const half = taps.length - 1;
  const width = 2 * half + 1;
  let room = new Float64Array(0);
  const length = reader.length < width ? 0 : Math.floor((reader.length - width) / factor) + 1;
  return {
    rate: reader.rate / factor,
    start: reader.start + half / reader.rate,
    length,
    read: (first, out) => {
      if (out.length === 0) return;
      const needed = (out.length - 1) * factor + width;
      if (room.length < needed) room = new Float64Array(needed);
      const raw = room.subarray(0, needed);
      reader.read(first * factor, raw);
      convolve(taps, raw, factor, out);
    },
  };
}

/** Every `factor`-th of the filtered samples. Taps on either side of the middle are equal: half the products; two sums at a time keep the processor busy. */
function convolve(taps: Float64Array, raw: Float64Array, factor: number, out: Float64Array): void {
  const half = taps.length - 1;
  for (let k = 0; k < out.length; k += 2) {
    const a = k * factor + half;
    // The last of an odd number is worked out twice.
    const b = k + 1 < out.length ? a + factor : a;
    let first = (taps[0] as number) * (raw[a] as number);
    let second = (taps[0] as number) * (raw[b] as number);
    for (let i = 1; i <= half; i++) {
      const tap = taps[i] as number;
      first += tap * ((raw[a - i] as number) + (raw[a + i] as number));
      second += tap * ((raw[b - i] as number) + (raw[b + i] as number));
    }
    out[k] = first;
    if (b > a) out[k + 1] = second;
  }
}

/** The middle tap of an odd, symmetric filter of sum 1, and those to one side: a sinc that ends at half the new rate, under a Kaiser window whose transition is half the new rate wide. */
function lowPass(factor: number): Float64Array {
  const half = Math.ceil(((ATTENUATION - 7.95) / (2.285 * Math.PI)) * factor * 0.5);
  const beta = 0.1102 * (ATTENUATION - 8.7);
  const taps = Float64Array.from({ length: half + 1 }, (_, i) => {
    const x = (Math.PI * i) / factor;
    const sinc = x === 0 ? 1 : Math.sin(x) / x;
    return sinc * bessel(beta * Math.sqrt(1 - (i / half) ** 2));
  });
  const sum = taps.reduce((total, tap, i) => total + (i === 0 ? tap : 2 * tap), 0);
  return taps.map((tap) => tap / sum);
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
