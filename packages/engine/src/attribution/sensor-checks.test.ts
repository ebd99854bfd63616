import { expect, test } from "vitest";
import { readerOf } from "../signal/index.js";
import { checkChannel, foldedFrequency } from "./sensor-checks.js";

const check = (samples: Float64Array, fullScale: number | null) => {
  const steps = checkChannel({ samples: readerOf({ samples, rate: 100, start: 0 }), quantity: "acceleration", fullScale });
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
};
const LENGTH = 200_000;
const wave = Float64Array.from({ length: LENGTH }, (_, n) => Math.sin(0.37 * n));
const cut = wave.map((x) => Math.max(-0.8, Math.min(0.8, x)));

test("a clipped wave is seen with and without its full scale, a sound one is not", () => {
  const outside = wave.reduce((sum, x) => sum + (Math.abs(x) >= 0.999 * 0.8 ? 1 : 0), 0);
  expect(check(cut, 0.8)).toMatchObject({ clipped: outside, clippedShare: outside / LENGTH, bad: -1 });
  expect(check(cut, null).clipped).toBeGreaterThan(outside / 2);
  expect(check(wave, null).clipped).toBe(0);
  expect(check(wave, 2).clipped).toBe(0);
  expect(check(new Float64Array(50).fill(3), null).clipped).toBe(0);
  // Plateaus below what comes later, runs of two, and one that lies across the seam of two pieces.
  expect(check(Float64Array.of(0, 0, 0, 1, 1, 1, -2, -2, 0, 2, 2, 2, 2, 0, -2, -2, -2), null).clipped).toBe(4 + 3);
  expect(
    check(
      wave.map((x, n) => (n >= 65_534 && n < 65_539 ? 1.5 : x)),
      null,
    ).clipped,
  ).toBe(5);
});

test("the first sample that is no number is named, wherever it lies", () => {
  for (const place of [0, 70_000, LENGTH - 1]) expect(check(wave.with(place, Number.NaN), null).bad).toBe(place);
});

test("a tone shows at its distance from the nearest multiple of the rate", () => {
  expect([10, 50, 60, 100, 130, 160].map((f) => foldedFrequency(f, 100))).toEqual([10, 50, 40, 0, 30, 40]);
});
