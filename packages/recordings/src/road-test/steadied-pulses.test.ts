import { expect, test } from "vitest";
import { steadiedPulses } from "./steadied-pulses.js";

/** Pulses of a shaft that gains speed evenly: the n-th at the root of n = 20 t + t^2. */
const pulse = (n: number): number => Math.sqrt(100 + n) - 10;
const TRUE = Float64Array.from({ length: 400 }, (_, n) => pulse(n));
const STEP = 0.002;
/** As a column of 0 and 1 shows them: in the middle of the step in which they fall. */
const sampled = TRUE.map((time) => (Math.ceil(time / STEP) - 0.5) * STEP);
const rms = (times: Float64Array): number =>
  Math.sqrt(times.reduce((sum, time, k) => sum + (time - (TRUE[k] as number)) ** 2, 0) / times.length);

test("halves what the steps of a sampled column scatter", () => {
  // A step spreads evenly: its rms is 1/sqrt 12 of it. Nine weights leave the root of the sum of their squares, 0.505.
  expect(Math.abs(rms(sampled) / (STEP / Math.sqrt(12)) - 1)).toBeLessThan(0.1);
  expect(rms(steadiedPulses(sampled)) / rms(sampled)).toBeLessThan(0.6);
});

test("leaves a steady acceleration as it is, but for the fifth derivative of so slow a curve", () => {
  expect(rms(steadiedPulses(TRUE))).toBeLessThan(STEP / 1000);
});

test("leaves pulses beside a missing or a doubled one where they are", () => {
  const lacking = TRUE.filter((_, k) => k !== 200);
  const steadied = steadiedPulses(lacking);
  expect([...steadied.subarray(196, 204)]).toEqual([...lacking.subarray(196, 204)]);
  expect(steadiedPulses(TRUE.slice(0, 5))).toEqual(TRUE.slice(0, 5));
});
