import FFT from "fft.js";

/** Transform of real samples: `re` and `im` of lines 0 to size/2 or as many as were asked for, in the unit of the samples times their number. The arrays are written anew by the next call. */
export interface HalfSpectrum {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

export type RealFft = (samples: Float64Array) => HalfSpectrum;

/** The least power of two that is not below `count`, and at least 4. */
export function transformSize(count: number): number {
  let size = 4;
  while (size < count) size *= 2;
  return size;
}

/**
 * Plan for transforms of `size` real samples, a power of two from 4: X(k) = sum of x(n) exp(-2 pi i k n / size), k = 0 to size/2.
 * lines: how many of them are wanted, from line 0 on; all when left out. Fewer samples are followed by zeros; more are a programmer's error and throw RangeError, as does a size that is no power of two.
 * Even and odd samples go through one complex transform of half the size, as its real and imaginary parts, and are parted afterwards: half the work.
 * Source: J. W. Cooley, P. A. W. Lewis and P. D. Welch, "The fast Fourier transform algorithm: programming considerations in the calculation of sine, cosine and
 * Laplace transforms", J. Sound Vib. 12(3), 315-337, 1970.
 */
export function realFft(size: number, lines = size / 2 + 1): RealFft {
  if (!Number.isInteger(Math.log2(size)) || size < 4) throw new RangeError(`a transform size is a power of two from 4, got ${size}`);
  const half = size / 2;
  const plan = new FFT(half);
  const padded = new Float64Array(size);
  const out = new Float64Array(size);
  const cosine = Float64Array.from({ length: half }, (_, k) => Math.cos((Math.PI * k) / half));
  const sine = Float64Array.from({ length: half }, (_, k) => Math.sin((Math.PI * k) / half));
  const re = new Float64Array(lines);
  const im = new Float64Array(lines);
  return (samples) => {
    if (samples.length > size) throw new RangeError(`${samples.length} samples do not fit a transform of ${size}`);
    padded.set(samples);
    padded.fill(0, samples.length);
    plan.transform(out, padded);
    re[0] = (out[0] as number) + (out[1] as number);
    if (lines > half) re[half] = (out[0] as number) - (out[1] as number);
    for (let k = 1; k < Math.min(half, lines); k++) {
      // One name a line: taking arrays apart costs more here than all the rest.
      const j = size - 2 * k;
      const even = (out[2 * k] as number) + (out[j] as number);
      const odd = (out[2 * k + 1] as number) + (out[j + 1] as number);
      const evenIm = (out[2 * k + 1] as number) - (out[j + 1] as number);
      const oddIm = (out[j] as number) - (out[2 * k] as number);
      const x = cosine[k] as number;
      const y = sine[k] as number;
      re[k] = (even + x * odd + y * oddIm) / 2;
      im[k] = (evenIm + x * oddIm - y * odd) / 2;
    }
    return { re, im };
  };
}
