import { describe, expect, test } from "vitest";
import { averagedSpectrum, peakAmplitudes } from "./spectrum.js";
import type { WindowName } from "./window.js";

/** Six decimals of the computed table. */
const SIX_DECIMALS = 0.6e-6;
const RATE = 1024;

const tone = (frequency: number): Float64Array =>
  Float64Array.from({ length: 8 * RATE }, (_, n) => 2 * Math.sin((2 * Math.PI * frequency * n) / RATE));
function spectrumOf(frequency: number, window: WindowName) {
  const spectrum = averagedSpectrum(tone(frequency), RATE, { window, blockLength: 1024, overlap: 0.5, detrend: "none" });
  if (!spectrum.ok) throw new Error(spectrum.code);
  return spectrum.value;
}
const most = (values: Float64Array): number => values.reduce((a, b) => Math.max(a, b));

// A sine of amplitude 2 at 1024 Hz, 8 s in blocks of 1024 that overlap by half; computed with scipy 1.17.1 (scipy.signal.welch, both scalings).
describe("scaling of tones and densities", () => {
  test.each([
    ["hann", 2, 1.333333, 1.697653],
    ["flattop", 2, 0.530469, 1.99775],
    ["boxcar", 2, 2, 1.273563],
  ] as const)("%s: mean square %f, density %f, midway between lines %f", (window, square, density, midway) => {
    const onLine = spectrumOf(64, window);
    expect(Math.abs((onLine.meanSquare[64] as number) - square)).toBeLessThan(SIX_DECIMALS);
    expect(Math.abs(most(onLine.density) - density)).toBeLessThan(SIX_DECIMALS);
    expect(Math.abs(most(peakAmplitudes(spectrumOf(64.5, window))) - midway)).toBeLessThan(SIX_DECIMALS);
  });
  test.each(["hann", "flattop", "boxcar"] as const)("%s: the densities add up to the mean square, on a line and off", (window) => {
    for (const frequency of [64, 64.5]) {
      const { density, lineSpacing } = spectrumOf(frequency, window);
      expect(Math.abs(density.reduce((a, b) => a + b) * lineSpacing - 2)).toBeLessThan(SIX_DECIMALS);
    }
  });
});
