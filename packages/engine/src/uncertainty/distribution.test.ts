import { expect, test } from "vitest";
import {
  arcsine,
  curvilinearTrapezoid,
  type Distribution,
  normal,
  rectangular,
  samplerOf,
  scaledT,
  standardUncertainty,
} from "./distribution.js";
import { uniformDeviates } from "./random.js";

const DRAWS = 200_000;
/** Four standard errors of the mean, and of the variance as the kurtosis of the shape sets it. */
const STANDARD_ERRORS = 4;
const ROUNDING = 1e-14;

const draws = (distribution: Distribution): readonly number[] =>
  Array.from({ length: DRAWS }, samplerOf(distribution, uniformDeviates(11)));
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

// Fourth moment over squared variance: exact for each shape (t with 10 degrees of freedom: 3 + 6/(10 - 4); trapezoid: at most that of a normal).
test.each([
  ["normal", normal(2, 0.3), 0.3, 3],
  ["rectangular", rectangular(-1, 0.6), 0.6 / Math.sqrt(3), 1.8],
  ["arcsine", arcsine(5, 0.5), 0.5 / Math.SQRT2, 1.5],
  ["curvilinear trapezoid", curvilinearTrapezoid(0, 0.05, 0.025), Math.sqrt(0.05 ** 2 / 3 + 0.025 ** 2 / 9), 3],
  ["t", scaledT(3, 0.2, 10), 0.2 * Math.sqrt(10 / 8), 4],
] as const)("draws of a %s have its value and standard uncertainty", (_, distribution, u, kurtosis) => {
  expect(Math.abs(standardUncertainty(distribution) - u)).toBeLessThan(ROUNDING);
  const values = draws(distribution);
  expect(Math.abs(mean(values) - distribution.value)).toBeLessThan((STANDARD_ERRORS * u) / Math.sqrt(DRAWS));
  const squares = values.map((value) => (value - distribution.value) ** 2);
  expect(Math.abs(mean(squares) - u ** 2)).toBeLessThan(STANDARD_ERRORS * u ** 2 * Math.sqrt((kurtosis - 1) / DRAWS));
});

/** Share of draws within a half width of the value, against the exact probability. */
test.each([
  ["rectangular", rectangular(1, 2), 0.5, 0.25],
  ["arcsine: 2/pi asin(1/2) = 1/3", arcsine(1, 2), 1, 1 / 3],
  ["curvilinear trapezoid: flat to a - d at density ln((a + d)/(a - d))/(4 d)", curvilinearTrapezoid(0, 3, 1), 2, Math.log(2)],
  ["t with 1 degree of freedom (Cauchy): half within one scale", scaledT(1, 2, 1), 2, 0.5],
  ["t with 2 degrees of freedom: t/sqrt(2 + t^2)", scaledT(0, 1, 2), 1, 1 / Math.sqrt(3)],
] as const)("%s", (_, distribution, within, probability) => {
  const share = draws(distribution).filter((value) => Math.abs(value - distribution.value) <= within).length / DRAWS;
  expect(Math.abs(share - probability)).toBeLessThan(STANDARD_ERRORS * Math.sqrt((probability * (1 - probability)) / DRAWS));
});

test("bounded shapes keep their bounds", () => {
  expect(draws(rectangular(1, 2)).every((value) => value >= -1 && value <= 3)).toBe(true);
  expect(draws(arcsine(1, 2)).every((value) => value >= -1 && value <= 3)).toBe(true);
  expect(draws(curvilinearTrapezoid(1, 2, 0.5)).every((value) => value >= -1.5 && value <= 3.5)).toBe(true);
});

test("a t with two degrees of freedom has no finite standard uncertainty", () => {
  expect(standardUncertainty(scaledT(0, 1, 2))).toBe(Number.POSITIVE_INFINITY);
});
