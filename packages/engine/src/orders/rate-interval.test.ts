import fc from "fast-check";
import { expect, test } from "vitest";
import type { MetresPerSecond } from "../units/index.js";
import { coincidences } from "./coincidences.js";
import { rateInterval } from "./rate-interval.js";
import { circumferenceAsGiven } from "./rolling-circumference.js";
import { type Powertrain, rotatingParts } from "./rotating-parts.js";

const speed = 25 as MetresPerSecond;
const powertrain: Powertrain = {
  circumference: circumferenceAsGiven(2.4),
  axleRatio: 3.73,
  transferRatio: 1,
  gearRatio: 1,
  cylinders: 6,
  slip: 0,
  accessories: [],
};
/** A few operations on doubles. */
const ROUNDING = 1e-12;
/** The share below is counted on a grid of this many steps a side. */
const STEPS = 400;

test("without slip the interval is 95 % of the circumference's half width of a hundredth", () => {
  for (const part of rotatingParts(powertrain, speed)) {
    const { low, high } = rateInterval(part, powertrain.circumference);
    expect(Math.abs(low / part.rate.value - (1 - 0.0095))).toBeLessThan(ROUNDING);
    expect(Math.abs(high / part.rate.value - (1 + 0.0095))).toBeLessThan(ROUNDING);
  }
});

/** How much of the sum of two even grids over +/- a and +/- b lies within +/- x. */
function shareWithin(a: number, b: number, x: number): number {
  let inside = 0;
  for (let i = 0; i < STEPS; i++) {
    const first = a * ((2 * i + 1) / STEPS - 1);
    for (let k = 0; k < STEPS; k++) if (Math.abs(first + b * ((2 * k + 1) / STEPS - 1)) <= x) inside++;
  }
  return inside / STEPS ** 2;
}

test("with slip it holds 95 % of all sums of the two errors, counted one by one", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.0005, max: 0.4, noNaN: true }), (slip) => {
      const engine = rotatingParts({ ...powertrain, slip }, speed).find(({ part }) => part === "engine");
      if (!engine) throw new Error("no engine");
      const { low, high } = rateInterval(engine, powertrain.circumference);
      const share = shareWithin(0.01, slip / 2, (high - low) / 2 / engine.rate.value);
      // One step of the grid at either edge.
      expect(Math.abs(share - 0.95)).toBeLessThan(2 / STEPS);
    }),
    { numRuns: 30 },
  );
});

test("ratios that are one and the same but for the rounding of their products coincide exactly", () => {
  // 3 x 1.1 is 3.3000000000000003 in binary.
  const parts = rotatingParts({ ...powertrain, axleRatio: 3.3, transferRatio: 1, gearRatio: 1 / 1.1 }, speed);
  const found = coincidences(parts, 100).find(
    ({ first, second }) => first.part === "wheel" && first.order === 3 && second.part === "engine" && second.order === 1,
  );
  expect(found).toMatchObject({ separation: 0, wheelTurns: null, partedByGear: true });
});
