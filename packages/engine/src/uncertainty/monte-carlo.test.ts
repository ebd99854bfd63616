import fc from "fast-check";
import { expect, test } from "vitest";
import { normal, rectangular } from "./distribution.js";
import { jointNormal } from "./joint-normal.js";
import { drawOutputs, type MonteCarloOptions, monteCarlo } from "./monte-carlo.js";
import { momentsOf } from "./sample-summary.js";

const DRAWS = 100_000;
const STANDARD_ERRORS = 4;

const difference: MonteCarloOptions = {
  inputs: [normal(5, 0.3), rectangular(2, 0.4)],
  model: (x) => (x[0] as number) - (x[1] as number),
  draws: DRAWS,
  seed: 9,
};

test("a difference has the difference of the means and the root sum of squares", () => {
  const { mean, standardDeviation } = monteCarlo(difference);
  const u = Math.sqrt(0.3 ** 2 + 0.4 ** 2 / 3);
  expect(Math.abs(mean - 3)).toBeLessThan((STANDARD_ERRORS * u) / Math.sqrt(DRAWS));
  // The kurtosis of the sum is below that of a normal, for which the standard deviation scatters by u/sqrt(2 n).
  expect(Math.abs(standardDeviation - u)).toBeLessThan((STANDARD_ERRORS * u) / Math.sqrt(2 * DRAWS));
});

test("the same seed gives the same result, another seed another", () => {
  fc.assert(
    fc.property(fc.integer(), (seed) => {
      const few = { ...difference, draws: 200, seed };
      expect(monteCarlo(few)).toEqual(monteCarlo(few));
      expect(monteCarlo({ ...few, seed: seed + 1 }).mean).not.toBe(monteCarlo(few).mean);
    }),
    { numRuns: 30 },
  );
});

test("an exact model of exact inputs has no width", () => {
  expect(monteCarlo({ inputs: [normal(2, 0)], model: (x) => 3 * (x[0] as number), draws: 100, seed: 1 })).toEqual({
    mean: 6,
    standardDeviation: 0,
    symmetric: { low: 6, high: 6 },
    shortest: { low: 6, high: 6 },
  });
});

test("inputs keep their places beside quantities drawn together", () => {
  const [a, b, c, d] = drawOutputs({
    inputs: [
      rectangular(1, 0.1),
      jointNormal(
        [20, 300],
        [0, 0],
        [
          [1, 0],
          [0, 1],
        ],
      ),
      rectangular(4000, 1),
    ],
    outputs: 4,
    model: (x, y) => y.set(x),
    draws: 50,
    seed: 2,
  }) as [Float64Array, Float64Array, Float64Array, Float64Array];
  expect(a.every((value) => Math.abs(value - 1) <= 0.1)).toBe(true);
  expect([...new Set(b), ...new Set(c)]).toEqual([20, 300]);
  expect(d.every((value) => Math.abs(value - 4000) <= 1)).toBe(true);
});

test("outputs of one trial belong together", () => {
  const [sum, difference] = drawOutputs({
    inputs: [normal(0, 1), normal(0, 1)],
    outputs: 2,
    model: (x, y) => {
      y[0] = (x[0] as number) + (x[1] as number);
      y[1] = (x[0] as number) - (x[1] as number);
    },
    draws: DRAWS,
    seed: 5,
  }) as [Float64Array, Float64Array];
  const halves = sum.map((value, i) => (value + (difference[i] as number)) / 2);
  const u = momentsOf(halves).standardDeviation;
  expect(Math.abs(u - 1)).toBeLessThan(STANDARD_ERRORS / Math.sqrt(2 * DRAWS));
});

test("an aborted run stops within one look and throws the caller's reason", () => {
  let aborted = false;
  let trials = 0;
  const run = (): unknown =>
    monteCarlo({
      ...difference,
      model: () => {
        trials++;
        return 0;
      },
      signal: {
        throwIfAborted: () => {
          if (aborted) throw new Error("enough");
        },
      },
      onProgress: (share) => {
        aborted = share >= 0.5;
      },
    });
  expect(run).toThrow("enough");
  expect(trials).toBeGreaterThan(DRAWS / 2 - 1);
  expect(trials).toBeLessThan(DRAWS / 2 + 1000);
});

test("progress rises from 0 to 1", () => {
  const shares: number[] = [];
  monteCarlo({ ...difference, draws: 5000, onProgress: (share) => shares.push(share) });
  expect(shares[0]).toBe(0);
  expect(shares.at(-1)).toBe(1);
  expect(shares.every((share, i) => i === 0 || share > (shares[i - 1] as number))).toBe(true);
});

test("a model without an answer, or too few draws, are refused", () => {
  expect(() => monteCarlo({ ...difference, model: (x) => Math.log((x[1] as number) - 2) })).toThrow(/model gave NaN/);
  expect(() => monteCarlo({ ...difference, draws: 10 })).toThrow(/too few/);
  expect(() => monteCarlo({ ...difference, draws: 1.5 })).toThrow(RangeError);
});
