import fc from "fast-check";
import { expect, test } from "vitest";
import { realFft } from "./real-fft.js";

/** Of sums of at most 64 samples up to 1. */
const ROUNDING = 1e-13;

test("a transform is its defining sum, of all lines or the first of them, zeros following where samples are short", () => {
  const sample = fc.double({ min: -1, max: 1, noNaN: true });
  const sizes = fc.constantFrom(4, 8, 16, 32, 64);
  fc.assert(
    fc.property(
      sizes,
      fc.array(sample, { minLength: 64, maxLength: 64 }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (size, all, share) => {
        const samples = Float64Array.from(all.slice(0, Math.ceil(share * size)));
        const lines = 1 + Math.round((share * size) / 2);
        for (const fft of [realFft(size), realFft(size, lines)])
          for (const { re, im } of [fft(Float64Array.from(all.slice(0, size))), fft(samples)].slice(-1)) {
            expect([lines, size / 2 + 1]).toContain(re.length);
            for (const [k, x] of re.entries()) {
              const [cosine, sine] = [Math.cos, Math.sin].map((f) =>
                samples.reduce((sum, sample, n) => sum + sample * f((2 * Math.PI * k * n) / size), 0),
              ) as [number, number];
              expect(Math.abs(x - cosine)).toBeLessThan(ROUNDING);
              expect(Math.abs((im[k] as number) + sine)).toBeLessThan(ROUNDING);
            }
          }
      },
    ),
    { numRuns: 300 },
  );
});
