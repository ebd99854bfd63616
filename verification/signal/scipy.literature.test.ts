import { readFileSync } from "node:fs";
import { averagedSpectrum, spectrogram, type WindowName } from "@halfturn/engine/signal";
import { expect, test } from "vitest";
import { must } from "./finish.js";

/** What SciPy 1.17.1 makes of the same signal; scipy-reference.py writes it. */
const reference = JSON.parse(readFileSync(new URL("./scipy-reference.golden.json", import.meta.url), "utf8"));
const { rate, count } = reference as { rate: number; count: number };
/** Sums of a thousand products in another order; the sequence sin(0.7 n^2) itself loses six digits where n^2 is large, alike in both. */
const ROUNDING = 1e-9;

const samples = Float64Array.from({ length: count }, (_, n) => {
  const t = n / rate;
  return (
    0.7 +
    1.3 * Math.cos(2 * Math.PI * 40 * t + 0.3) +
    0.4 * Math.sin(2 * Math.PI * 97.3 * t) +
    0.8 * Math.cos(2 * Math.PI * (20 * t + 3 * t * t)) +
    0.2 * Math.sin(n * n * 0.7)
  );
});

interface Welch {
  readonly window: WindowName;
  readonly blockLength: number;
  readonly overlap: number;
  readonly detrend: "mean" | "none";
  readonly lines: readonly number[];
  readonly density: readonly number[];
  readonly meanSquare: readonly number[];
}

test.each(reference.welch as readonly Welch[])(
  "$window over $blockLength samples, overlap $overlap, detrend $detrend: as SciPy's welch",
  (settings) => {
    const { lines, density, meanSquare, ...cut } = settings;
    const spectrum = must(averagedSpectrum(samples, rate, cut));
    for (const [i, line] of lines.entries()) {
      expect(Math.abs((spectrum.density[line] as number) - (density[i] as number))).toBeLessThan(ROUNDING);
      expect(Math.abs((spectrum.meanSquare[line] as number) - (meanSquare[i] as number))).toBeLessThan(ROUNDING);
    }
  },
);

test("a spectrogram is as SciPy's, row by row", () => {
  const { blockLength, overlap, times, rows, meanSquare } = reference.spectrogram as {
    blockLength: number;
    overlap: number;
    times: number[];
    rows: number[];
    meanSquare: number[][];
  };
  const found = must(spectrogram(samples, rate, { window: "hann", blockLength, overlap, detrend: "mean" }));
  expect(Array.from(found.times)).toEqual(times);
  for (const [i, row] of rows.entries())
    for (const [k, square] of (meanSquare[i] ?? []).entries())
      expect(Math.abs((found.meanSquare[row * found.lines + k] as number) - square)).toBeLessThan(ROUNDING);
});
