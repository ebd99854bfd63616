import fc from "fast-check";
import { expect, test } from "vitest";
import { realFft } from "./real-fft.js";

/** Of sums of at most 64 samples up to 1. */
const ROUNDING = 1e-13;

/** The sum itself: cosine and sine parts of line k. */
function lineOf(samples: Float64Array, k: number, size: number): readonly [number, number] {
  let [cosine, sine] = [0, 0];
  for (const [n, x] of samples.entries()) {
    cosine += x * Math.cos((2 * Math.PI * k * n) / size);
    sine += x * Math.sin((2 * Math.PI * k * n) / size);
  }
  return [cosine, sine];
}

test("a transform is its defining sum, of all lines or the first of them, zeros following where samples are short", () => {
  const sample = fc.double({ min: -1, max: 1, noNaN: true });
  const sizes = fc.constantFrom(4, 8, 16, 32, 64);
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(sizes, fc.array(sample, { minLength: 64, maxLength: 64 }), share, (size, all, part) => {
      const samples = Float64Array.from(all.slice(0, Math.ceil(part * size)));
      const lines = 1 + Math.round((part * size) / 2);
      for (const [fft, count] of [[realFft(size), size / 2 + 1] as const, [realFft(size, lines), lines] as const]) {
        // What was asked before must leave nothing behind.
        fft(Float64Array.from(all.slice(0, size)));
        const { re, im } = fft(samples);
        expect([re.length, im.length]).toEqual([count, count]);
        const worst = [...re].map((x, k) => {
          const [cosine, sine] = lineOf(samples, k, size);
          return Math.max(Math.abs(x - cosine), Math.abs((im[k] as number) + sine));
        });
        expect(Math.max(...worst)).toBeLessThan(ROUNDING);
      }
    }),
    { numRuns: 300 },
  );
});
