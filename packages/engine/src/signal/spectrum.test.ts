import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { realFft } from "./real-fft.js";
import { spectrogram } from "./spectrogram.js";
import { averagedSpectrum, averagedSpectrumSteps, peakAmplitudes, rmsAmplitudes } from "./spectrum.js";

/** Rounding of a transform of at most 1024 values of size 1. */
const ROUNDING = 1e-11;
/** A tone that fills whole blocks reads as it is, but for rounding. */
const EXACT = 1e-9;

function slowTransform(samples: readonly number[], size: number, line: number): readonly [number, number] {
  let re = 0;
  let im = 0;
  for (const [n, x] of samples.entries()) {
    re += x * Math.cos((2 * Math.PI * line * n) / size);
    im -= x * Math.sin((2 * Math.PI * line * n) / size);
  }
  return [re, im];
}

describe("the fast transform", () => {
  test("is the sum it stands for, every line from 0 to the middle, at every size and filling", () => {
    const anySize = fc
      .integer({ min: 2, max: 8 })
      .chain((power) =>
        fc.tuple(fc.constant(2 ** power), fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 1, maxLength: 2 ** power })),
      );
    fc.assert(
      fc.property(anySize, ([size, samples]) => {
        const { re, im } = realFft(size)(Float64Array.from(samples));
        for (let k = 0; k <= size / 2; k++) {
          const [slowRe, slowIm] = slowTransform(samples, size, k);
          expect(Math.hypot((re[k] as number) - slowRe, (im[k] as number) - slowIm)).toBeLessThan(ROUNDING);
        }
      }),
    );
  });
  test("refuses sizes it cannot do", () => {
    expect(() => realFft(12)).toThrow(RangeError);
    expect(() => realFft(8)(new Float64Array(9))).toThrow(RangeError);
  });
});

const settings = { window: "hann", blockLength: 1000, overlap: 0.5, detrend: "none" } as const;

describe("an averaged spectrum", () => {
  test("is in peak or in rms, and says the mean at 0 Hz", () => {
    const samples = Float64Array.from({ length: 4096 }, (_, n) => 3 + 2 * Math.cos((2 * Math.PI * 32 * n) / 512));
    const spectrum = averagedSpectrum(samples, 512, { ...settings, blockLength: 512 });
    if (!spectrum.ok) throw new Error(spectrum.code);
    expect(Math.abs((peakAmplitudes(spectrum.value)[32] as number) - 2)).toBeLessThan(EXACT);
    expect(Math.abs((rmsAmplitudes(spectrum.value)[32] as number) - Math.SQRT2)).toBeLessThan(EXACT);
    expect(Math.abs((peakAmplitudes(spectrum.value)[0] as number) - 3)).toBeLessThan(EXACT);
  });
  test("keeps mean square and tone where blocks are no power of two", () => {
    const samples = Float64Array.from({ length: 8000 }, (_, n) => Math.sin((2 * Math.PI * 125 * n) / 1000));
    const spectrum = averagedSpectrum(samples, 1000, settings);
    if (!spectrum.ok) throw new Error(spectrum.code);
    // 125 Hz lies on a line of the padded transform too: 128 of 1024.
    expect(Math.abs((peakAmplitudes(spectrum.value)[128] as number) - 1)).toBeLessThan(EXACT);
    expect(Math.abs(spectrum.value.density.reduce((a, b) => a + b) * spectrum.value.lineSpacing - 0.5)).toBeLessThan(EXACT);
  });
  test("can lose the mean", () => {
    const spectrum = averagedSpectrum(new Float64Array(2000).fill(9.81), 1000, { ...settings, detrend: "mean" });
    expect(spectrum.ok && spectrum.value.density.every((d) => d < ROUNDING)).toBe(true);
  });
  test("is the mean of its blocks, asks for one of them at a time, and lets others in meanwhile", () => {
    const samples = Float64Array.from({ length: 40_000 }, (_, n) => Math.sin(n * n));
    const asked: number[] = [];
    const read = (first: number, out: Float64Array): void => {
      asked.push(out.length);
      out.set(samples.subarray(first, first + out.length));
    };
    const steps = averagedSpectrumSteps({ rate: 1000, start: 3, length: samples.length, read }, settings);
    const shares: number[] = [];
    let step = steps.next();
    for (; !step.done; step = steps.next()) shares.push(step.value);
    const blocks = spectrogram(samples, 1000, settings);
    if (!step.value.ok || !blocks.ok) throw new Error("no spectrum");
    const { meanSquare } = step.value.value;
    const { lines, times } = blocks.value;
    expect([times.length, asked]).toEqual([79, Array(79).fill(1000)]);
    expect(shares).toEqual([16, 32, 48, 64].map((done) => done / 79));
    for (let k = 0; k < lines; k++) {
      const mean = times.reduce((sum, _, block) => sum + (blocks.value.meanSquare[block * lines + k] as number) / times.length, 0);
      expect(Math.abs((meanSquare[k] as number) - mean)).toBeLessThan(ROUNDING);
    }
  });
  test("says what is wrong with a signal", () => {
    expect(averagedSpectrum(new Float64Array(10), 1000, settings)).toMatchObject({
      ok: false,
      code: "signal.too-short",
      params: { samples: 10, needed: 1000 },
    });
    expect(averagedSpectrum(new Float64Array(0), 1000, settings)).toMatchObject({ code: "signal.no-samples" });
    expect(averagedSpectrum(new Float64Array(2000), 0, settings)).toMatchObject({ code: "signal.bad-rate" });
    expect(() => averagedSpectrum(new Float64Array(2000), 1000, { ...settings, overlap: 1 })).toThrow(RangeError);
  });
});

test("a spectrogram shows when a tone stops", () => {
  const samples = Float64Array.from({ length: 4096 }, (_, n) => (n < 2048 ? Math.sin((2 * Math.PI * 64 * n) / 512) : 0));
  const result = spectrogram(samples, 512, { window: "hann", blockLength: 512, overlap: 0, detrend: "none" });
  if (!result.ok) throw new Error(result.code);
  const { times, lines, meanSquare } = result.value;
  expect([...times]).toEqual([0.5, 1.5, 2.5, 3.5, 4.5, 5.5, 6.5, 7.5]);
  const tone = [...times].map((_, block) => meanSquare[block * lines + 64] as number);
  for (const [block, square] of tone.entries()) expect(Math.abs(square - (block < 4 ? 0.5 : 0))).toBeLessThan(EXACT);
});
