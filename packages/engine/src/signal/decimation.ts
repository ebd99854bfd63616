import type { SampleReader } from "./sample-reader.js";

/** Stop band 80 dB down, and a pass band as even: amplitudes stay right to 1 part in 10,000. */
const ATTENUATION = 80;

/** What a low-pass keeps and what it takes away, Hz; between the two it weakens. */
export interface Passing {
  /** Up to here amplitudes and phases are kept. */
  readonly pass: number;
  /** From here on nothing is left. The nearer to `pass`, the longer the filter. */
  readonly stop: number;
}

/** Of the new rate: what lies beyond three quarters would fold back below a quarter. */
const quarters = (rate: number): Passing => ({ pass: rate / 4, stop: (3 * rate) / 4 });

/**
 * Fewer samples: every `factor`-th (a whole number from 1) of a low-passed signal. Unless told otherwise, amplitudes and phases are kept below a quarter of the new
 * rate; what lay above three quarters of it is gone; between the two it is weakened or folds back onto itself, but not below a quarter. A factor of 1 leaves the
 * signal as it is, whatever is to pass. As a reader it holds the filter and room for what was last asked. Its first and last samples lie half a filter inside the recording's.
 * Source: J. F. Kaiser, "Nonrecursive digital filter design using the I0-sinh window function", Proc. IEEE ISCAS 1974.
 */
export function decimated(reader: SampleReader, factor: number, passing: Passing = quarters(reader.rate / factor)): SampleReader {
  if (!(Number.isInteger(factor) && factor >= 1)) throw new RangeError(`a factor is a whole number from 1, got ${factor}`);
  if (factor === 1) return reader;
  if (!(passing.stop > passing.pass))
    throw new RangeError(`a filter stops above what it passes, got ${passing.stop} and ${passing.pass} Hz`);
  const taps = lowPass(passing, reader.rate);
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

/** The middle tap of an odd, symmetric filter of sum 1, and those to one side: a sinc that ends midway between pass and stop, under a Kaiser window. */
function lowPass({ pass, stop }: Passing, rate: number): Float64Array {
  const transition = (2 * Math.PI * (stop - pass)) / rate;
  const half = Math.ceil((ATTENUATION - 7.95) / (2.285 * transition) / 2);
  const beta = 0.1102 * (ATTENUATION - 8.7);
  const taps = Float64Array.from({ length: half + 1 }, (_, i) => {
    const x = (Math.PI * (pass + stop) * i) / rate;
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
