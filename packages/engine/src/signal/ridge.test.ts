import fc from "fast-check";
import { expect, test } from "vitest";
import { normalDeviates, uniformDeviates } from "../uncertainty/index.js";
import { followRidge, overNoise } from "./ridge.js";

/** Every path, one by one. */
function bestOfAll(scores: Float64Array, states: number, reach: number, stiffness: number): number {
  const rows = scores.length / states;
  const best = (row: number, state: number): number => {
    const own = scores[row * states + state] as number;
    if (row === rows - 1) return own;
    let most = Number.NEGATIVE_INFINITY;
    for (let next = Math.max(0, state - reach); next <= Math.min(states - 1, state + reach); next++)
      most = Math.max(most, best(row + 1, next) - stiffness * ((next - state) / reach) ** 2);
    return own + most;
  };
  return Math.max(...Array.from({ length: states }, (_, state) => best(0, state)));
}

/** Sums of five numbers below ten. */
const ROUNDING = 1e-12;

test("no path is better than the one followed", () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 20, maxLength: 20 }),
      fc.integer({ min: 1, max: 3 }),
      (list, reach) => {
        const scores = Float64Array.from(list);
        const { states } = followRidge(scores, 4, reach, 0.7);
        const path = states.map(Math.round);
        const worth = path.reduce(
          (sum, state, row) =>
            sum + (scores[row * 4 + state] as number) - (row === 0 ? 0 : 0.7 * ((state - (path[row - 1] as number)) / reach) ** 2),
          0,
        );
        // A peak's vertex may lie half a state away and then round to the neighbour: only paths that round back are compared.
        if (states.some((state) => Math.abs(state - Math.round(state)) > 0.49)) return;
        expect(Math.abs(worth - bestOfAll(scores, 4, reach, 0.7))).toBeLessThan(ROUNDING);
      },
    ),
  );
});

test("noise lies at 1 on average whatever its slope, and a peak stands out by its height", () => {
  const normal = normalDeviates(uniformDeviates(3));
  const power = Float64Array.from({ length: 4000 }, (_, k) => ((normal() ** 2 + normal() ** 2) / 2) * Math.exp(-k / 1000));
  power[1000] = 200 * Math.exp(-1);
  const ratio = overNoise(power, 40);
  const mean = ratio.reduce((sum, r, k) => (k === 1000 ? sum : sum + r / 3999), 0);
  // Medians of 81 values scatter by a sixth, and the mean of a ratio to them lies a little high.
  expect(Math.abs(mean - 1)).toBeLessThan(0.06);
  expect(Math.abs((ratio[1000] as number) / 200 - 1)).toBeLessThan(0.4);
});
