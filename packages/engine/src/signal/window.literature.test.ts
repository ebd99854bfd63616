import { describe, expect, test } from "vitest";
import { type WindowName, windowFigures, windowSamples } from "./window.js";

/** Six decimals of the computed table. */
const SIX_DECIMALS = 0.6e-6;
/** Four decimals of a decibel. */
const DECIBEL_DIGITS = 0.6e-4;
/** Harris prints two decimals; Hamming's scallop loss is printed 1.78, the window itself gives 1.75. */
const HARRIS_DIGITS = 0.0065;
const EIGHT_DECIMALS = 0.6e-8;

const figures = (name: WindowName) => windowFigures(windowSamples(name, 1024));

describe("figures of periodic windows of 1024 samples", () => {
  // Computed with scipy 1.17.1 (scipy.signal.get_window, fftbins) from the definitions of Harris 1978.
  test.each([
    ["boxcar", 1, 1, 3.9224],
    ["hann", 0.5, 1.5, 1.4236],
    ["hamming", 0.54, 1.362826, 1.7514],
    ["blackman", 0.42, 1.726757, 1.0989],
    ["blackman-harris", 0.35875, 2.004353, 0.8256],
    ["nuttall", 0.363582, 1.976109, 0.8506],
    ["flattop", 0.215579, 3.770246, 0.0098],
  ] as const)("%s: gain %f, noise bandwidth %f lines, scallop loss %f dB", (name, gain, bandwidth, scallop) => {
    expect(Math.abs(figures(name).coherentGain - gain)).toBeLessThan(SIX_DECIMALS);
    expect(Math.abs(figures(name).noiseBandwidth - bandwidth)).toBeLessThan(SIX_DECIMALS);
    expect(Math.abs(figures(name).scallopLoss - scallop)).toBeLessThan(DECIBEL_DIGITS);
  });
  // F. J. Harris, Proc. IEEE 66(1), 51-83, 1978, Table I (from memory).
  test.each([
    ["boxcar", 1.0, 3.92],
    ["hann", 1.5, 1.42],
    ["blackman", 1.73, 1.1],
    ["blackman-harris", 2.0, 0.83],
  ] as const)("%s as Harris prints it: %f lines, %f dB", (name, bandwidth, scallop) => {
    expect(Math.abs(figures(name).noiseBandwidth - bandwidth)).toBeLessThan(HARRIS_DIGITS);
    expect(Math.abs(figures(name).scallopLoss - scallop)).toBeLessThan(HARRIS_DIGITS);
  });
  test("a periodic Hann window of eight samples, not the symmetric one", () => {
    const expected = [0, 0.14644661, 0.5, 0.85355339, 1, 0.85355339, 0.5, 0.14644661];
    for (const [n, w] of windowSamples("hann", 8).entries()) expect(Math.abs(w - (expected[n] as number))).toBeLessThan(EIGHT_DECIMALS);
  });
});
