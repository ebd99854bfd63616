import { describe, expect, test } from "vitest";
import { degreesToRadians } from "../units/index.js";
import { type AngleSignal, orderCut, orderSpectrum, resampleByAngle } from "./order-tracking.js";
import { must, sweptAngle, sweptTime } from "./shaft-angle.test-support.js";
import { averagedSpectrum, peakAmplitudes } from "./spectrum.js";
import { shaftAngleFromPulses } from "./tachometer-angle.js";

/** What the computed case leaves of a cubic spline, doubled: our spline is natural at its ends, the table's is not. */
const SPLINE = 1e-6;
/** Of the angle's phase, rad: six decimals of a degree, and the same allowance. */
const PHASE = 1e-6;
/** Four decimals of the smeared line. */
const SMEARED_DIGITS = 0.6e-4;
/** J1(k delta) of a sine of jitter, six decimals; the spline and finite pulses leave a little more. */
const JITTER = 2e-5;
const RATE = 2048;

// x = cos a + 0.5 cos(2a + 0.3) + 0.25 cos 3a over 8 s at 2048 Hz while the shaft goes from 10 to 26 Hz; computed with numpy and scipy 1.17.1.
const angleAt = sweptAngle(10, 2);
const samples = Float64Array.from({ length: 8 * RATE }, (_, n) => {
  const a = angleAt(n / RATE);
  return Math.cos(a) + 0.5 * Math.cos(2 * a + 0.3) + 0.25 * Math.cos(3 * a);
});

describe("a run-up from 10 to 26 Hz", () => {
  const pulses = Float64Array.from({ length: 145 }, (_, turn) => sweptTime(10, 2)(turn));
  const tracked = must(resampleByAngle({ samples, rate: RATE, start: 0 }, must(shaftAngleFromPulses(pulses, 1)).angle, 64));
  const cut = (order: number) => must(orderCut(tracked, order, 143, "boxcar"));
  test("holds 144 whole turns, of which the computed case takes 143", () => {
    expect(tracked.samples.length).toBe(144 * 64);
  });
  test.each([
    [1, 0.99999998],
    [2, 0.49999983],
    [3, 0.24999956],
  ])("order %i has an amplitude of %f", (order, amplitude) => {
    expect(Math.abs((cut(order).amplitudes[0] as number) - amplitude)).toBeLessThan(SPLINE);
  });
  test("order 2 keeps its phase of 0.3 rad", () => {
    expect(Math.abs((cut(2).phases[0] as number) - 0.3)).toBeLessThan(PHASE);
  });
  test("whereas a spectrum over time smears it: no line above 0.1768", () => {
    const smeared = must(averagedSpectrum(samples, RATE, { window: "hann", blockLength: samples.length, overlap: 0, detrend: "none" }));
    expect(Math.abs(peakAmplitudes(smeared).reduce((a, b) => Math.max(a, b)) - 0.1768)).toBeLessThan(SMEARED_DIGITS);
  });
  test("the cut follows the speed", () => {
    const { speeds, amplitudes } = must(orderCut(tracked, 1, 8));
    for (const [i, speed] of speeds.entries()) if (i > 0) expect(speed).toBeGreaterThan(speeds[i - 1] as number);
    for (const amplitude of amplitudes) expect(Math.abs(amplitude - 1)).toBeLessThan(SPLINE);
  });
});

describe("a tachometer whose marks lie off centre makes false orders beside the true one", () => {
  // Sidebands at k - 1 and k + 1 of ratio J1(k delta), by the expansion of cos(k (a + delta sin a)) in Bessel functions.
  test.each([
    [1, 0.017451],
    [5, 0.086935],
  ])("by %i degrees, on order 2: a ratio of %f", (degrees, ratio) => {
    const jitter = degreesToRadians(degrees);
    // The mark passes when the shaft stands at a, though its place says a + delta sin a.
    const pulses = Float64Array.from({ length: 64 * 42 }, (_, mark) => {
      const place = (2 * Math.PI * mark) / 64;
      return (place + jitter * Math.sin(place)) / (2 * Math.PI * 10);
    });
    const steady = Float64Array.from({ length: 4.1 * RATE }, (_, n) => Math.cos(2 * 2 * Math.PI * 10 * (n / RATE)));
    const tracked = must(resampleByAngle({ samples: steady, rate: RATE, start: 0 }, must(shaftAngleFromPulses(pulses, 64)).angle, 64));
    const lines = peakAmplitudes(must(orderSpectrum(firstTurns(tracked, 32), 32, "boxcar")));
    const [below, above] = [lines[32] as number, lines[96] as number];
    const expectedMain = Math.sqrt(1 - 2 * ratio ** 2);
    // Into order 1 falls the mirror image of the third sideband too: J3(k delta), about ratio^3 / 6.
    expect(Math.abs(below - ratio)).toBeLessThan(JITTER + ratio ** 3 / 6);
    expect(Math.abs(above - ratio)).toBeLessThan(JITTER);
    expect(lines[64] as number).toBeGreaterThan(expectedMain - ratio ** 2);
  });
});

function firstTurns(signal: AngleSignal, turns: number): AngleSignal {
  const length = turns * signal.samplesPerTurn;
  return { ...signal, samples: signal.samples.slice(0, length), times: signal.times.slice(0, length) };
}
