import { describe, expect, test } from "vitest";
import { comfortOf, vibrationTotal, weightedRms, weightedRmsOfSpectrum, weightingFactor } from "./human-weighting.js";
import { must } from "./shaft-angle.test-support.js";
import { averagedSpectrum } from "./spectrum.js";

/** The table prints three digits of a factor times 1000; one unit in the last place, as some entries are rounded the other way. */
const lastDigit = (printed: number): number => (printed < 10 ? 0.01 : printed < 100 ? 0.1 : 1);
/** Five decimals of computed factors. */
const FIVE_DECIMALS = 0.6e-5;
/** A tone cut out by a Hann window spreads over three lines, over which the filter is not flat. */
const SPREAD = 1e-3;

describe("weighting of vibration as people feel it", () => {
  // ISO 2631-1:1997, table 3, factors times 1000 at nominal frequencies (from memory, and in two public sources). Wd at 10 Hz is the filter's 201.7, not the misprinted 212.
  test.each([
    [0.5, 418, 853],
    [0.63, 459, 944],
    [0.8, 477, 992],
    [1, 482, 1011],
    [1.25, 484, 1008],
    [1.6, 494, 968],
    [2, 531, 890],
    [2.5, 631, 776],
    [3.15, 804, 642],
    [4, 967, 512],
    [5, 1039, 409],
    [6.3, 1054, 323],
    [8, 1036, 253],
    [10, 988, 201.7],
    [12.5, 902, 161],
    [16, 768, 125],
    [20, 636, 100],
    [25, 513, 80.0],
    [31.5, 405, 63.2],
    [40, 314, 49.4],
    [50, 246, 38.8],
    [63, 186, 29.5],
    [80, 132, 21.1],
    [100, 88.7, 14.1],
    [125, 54.0, 8.63],
    [160, 28.5, 4.55],
    [200, 15.2, 2.43],
  ])("%f Hz: Wk %f, Wd %f", (frequency, wk, wd) => {
    expect(Math.abs(1000 * weightingFactor("Wk", frequency) - wk)).toBeLessThan(lastDigit(wk));
    expect(Math.abs(1000 * weightingFactor("Wd", frequency) - wd)).toBeLessThan(lastDigit(wd));
  });
  test("Wd at 10 Hz is what the filter of Annex A says: 0.20171", () => {
    expect(Math.abs(weightingFactor("Wd", 10) - 0.20171)).toBeLessThan(FIVE_DECIMALS);
  });
  // Tones of a driveline; computed with numpy from the same transfer functions.
  test.each([
    [6.77, 1.05213, 0.30019],
    [13.5, 0.86401, 0.14886],
    [20.86, 0.61151, 0.09599],
    [41.7, 0.30058, 0.04728],
  ])("a tone at %f Hz: Wk %f, Wd %f", (frequency, wk, wd) => {
    expect(Math.abs(weightedRms("Wk", [{ frequency, rms: 1 }]) - wk)).toBeLessThan(FIVE_DECIMALS);
    expect(Math.abs(weightedRms("Wd", [{ frequency, rms: 1 }]) - wd)).toBeLessThan(FIVE_DECIMALS);
  });
  test("a spectrum weighs as its tones do", () => {
    const samples = Float64Array.from({ length: 8192 }, (_, n) => Math.SQRT2 * Math.sin((2 * Math.PI * 10 * n) / 512));
    const spectrum = must(averagedSpectrum(samples, 512, { window: "hann", blockLength: 4096, overlap: 0.5, detrend: "mean" }));
    expect(Math.abs(weightedRmsOfSpectrum("Wk", spectrum) - 0.98841)).toBeLessThan(SPREAD);
  });
});

test("bands add by squares, directions too", () => {
  const both = weightedRms("Wk", [
    { frequency: 10, rms: 3 },
    { frequency: 20, rms: 4 },
  ]);
  expect(Math.abs(both - Math.hypot(3 * 0.98841, 4 * 0.63592))).toBeLessThan(10 * FIVE_DECIMALS);
  expect(vibrationTotal(2, 3, 6)).toBe(7);
  expect(weightingFactor("Wk", 0)).toBe(0);
});

// ISO 2631-1:1997, Annex C.2.3 (from memory): the ranges overlap.
test.each([
  [0, ["comfort.not-uncomfortable"]],
  [0.4, ["comfort.a-little-uncomfortable"]],
  [0.55, ["comfort.a-little-uncomfortable", "comfort.fairly-uncomfortable"]],
  [0.9, ["comfort.fairly-uncomfortable", "comfort.uncomfortable"]],
  [1.1, ["comfort.uncomfortable"]],
  [2.2, ["comfort.very-uncomfortable", "comfort.extremely-uncomfortable"]],
  [9, ["comfort.extremely-uncomfortable"]],
])("%f m/s^2 is %j", (total, comfort) => {
  expect(comfortOf(total)).toEqual(comfort);
});
