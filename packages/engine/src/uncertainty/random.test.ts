import fc from "fast-check";
import { expect, test } from "vitest";
import { normalDeviates, uniformDeviates } from "./random.js";

const take = (count: number, next: () => number): readonly number[] => Array.from({ length: count }, next);
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

const DRAWS = 200_000;
/** Four standard errors: a fixed seed passes or fails for good, and a biased source fails. */
const STANDARD_ERRORS = 4;

test("the same seed gives the same sequence, another seed another", () => {
  fc.assert(
    fc.property(fc.integer({ min: -(2 ** 31), max: 2 ** 31 - 1 }), (seed) => {
      const sequence = take(50, uniformDeviates(seed));
      expect(take(50, uniformDeviates(seed))).toEqual(sequence);
      const neighbour = take(50, uniformDeviates(seed + 1));
      expect(sequence.filter((value, i) => value === neighbour[i])).toEqual([]);
    }),
  );
});

test("neighbouring seeds are unrelated from the first deviate on", () => {
  // A chance correlation of 4000 pairs has standard deviation 1/sqrt(4000).
  const firsts = Array.from({ length: 4001 }, (_, seed) => uniformDeviates(seed)() - 0.5);
  const products = firsts.slice(1).map((value, i) => 12 * value * (firsts[i] as number));
  expect(Math.abs(mean(products))).toBeLessThan(STANDARD_ERRORS / Math.sqrt(products.length));
});

test("uniform deviates lie in [0, 1) with the mean, variance and lag-one correlation of a uniform", () => {
  const values = take(DRAWS, uniformDeviates(1));
  expect(values.every((value) => value >= 0 && value < 1)).toBe(true);
  expect(Math.abs(mean(values) - 1 / 2)).toBeLessThan(STANDARD_ERRORS * Math.sqrt(1 / 12 / DRAWS));
  expect(Math.abs(mean(values.map((value) => (value - 0.5) ** 2)) - 1 / 12)).toBeLessThan(STANDARD_ERRORS * Math.sqrt(1 / 180 / DRAWS));
  const lagged = values.slice(1).map((value, i) => 12 * (value - 0.5) * ((values[i] as number) - 0.5));
  expect(Math.abs(mean(lagged))).toBeLessThan(STANDARD_ERRORS / Math.sqrt(DRAWS));
});

test("uniform deviates use more than 32 bits", () => {
  expect(take(100, uniformDeviates(3)).some((value) => !Number.isInteger(value * 2 ** 32))).toBe(true);
});

test("normal deviates have the first four moments of a standard normal", () => {
  const values = take(DRAWS, normalDeviates(uniformDeviates(2)));
  // Var of x is 1, of x^2 is 2, of x^3 is 15, of x^4 is 96.
  for (const [power, moment, variance] of [
    [1, 0, 1],
    [2, 1, 2],
    [3, 0, 15],
    [4, 3, 96],
  ] as const) {
    expect(Math.abs(mean(values.map((value) => value ** power)) - moment)).toBeLessThan(STANDARD_ERRORS * Math.sqrt(variance / DRAWS));
  }
});

test("a seed that is not an integer is refused", () => {
  expect(() => uniformDeviates(0.5)).toThrow(RangeError);
  expect(() => uniformDeviates(Number.NaN)).toThrow(RangeError);
});
