import FFT from "fft.js";

/** Transform of real samples: `re` and `im` of lines 0 to size/2, in the unit of the samples times their number. The arrays are written anew by the next call. */
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
 * Fewer samples are followed by zeros; more are a programmer's error and throw RangeError, as does a size that is no power of two.
 * The library fills only the lower half of its output for real input, and that is all that is read here.
 */
export function realFft(size: number): RealFft {
  if (!Number.isInteger(Math.log2(size)) || size < 4) throw new RangeError(`a transform size is a power of two from 4, got ${size}`);
  const plan = new FFT(size);
  const padded = new Float64Array(size);
  const out = new Float64Array(2 * size);
  const re = new Float64Array(size / 2 + 1);
  const im = new Float64Array(size / 2 + 1);
  return (samples) => {
    if (samples.length > size) throw new RangeError(`${samples.length} samples do not fit a transform of ${size}`);
    padded.fill(0);
    padded.set(samples);
    plan.realTransform(out, padded);
    for (let k = 0; k <= size / 2; k++) {
      re[k] = out[2 * k] as number;
      im[k] = out[2 * k + 1] as number;
    }
    return { re, im };
  };
}
