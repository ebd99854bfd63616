import { expect, test } from "vitest";
import { jointNormal, jointNormalSampler } from "./joint-normal.js";
import { normalDeviates, uniformDeviates } from "./random.js";

const DRAWS = 100_000;
const STANDARD_ERRORS = 4;
const ROUNDING = 1e-12;

function sample(correlation: readonly (readonly number[])[]): readonly Float64Array[] {
  const size = correlation.length;
  const draw = jointNormalSampler(jointNormal(Array(size).fill(1), Array(size).fill(0.5), correlation), normalDeviates(uniformDeviates(4)));
  return Array.from({ length: DRAWS }, () => {
    const out = new Float64Array(size);
    draw(out, 0);
    return out;
  });
}

test("draws have the correlations asked for", () => {
  const correlation = [
    [1, 0.9, -0.3],
    [0.9, 1, 0],
    [-0.3, 0, 1],
  ];
  const draws = sample(correlation);
  for (const [i, row] of correlation.entries()) {
    for (const [j, r] of row.entries()) {
      const products = draws.map((draw) => (((draw[i] as number) - 1) * ((draw[j] as number) - 1)) / 0.25);
      const mean = products.reduce((sum, value) => sum + value, 0) / DRAWS;
      // The product of two standard normals correlated by r has variance 1 + r^2.
      expect(Math.abs(mean - r)).toBeLessThan(STANDARD_ERRORS * Math.sqrt((1 + r * r) / DRAWS));
    }
  }
});

test("fully correlated quantities move as one", () => {
  const draws = sample([
    [1, 1],
    [1, 1],
  ]);
  expect(draws.every((draw) => Math.abs((draw[0] as number) - (draw[1] as number)) < ROUNDING)).toBe(true);
  expect(new Set(draws.map((draw) => draw[0])).size).toBeGreaterThan(DRAWS / 2);
});

test.each([
  ["not square", [[1, 0]]],
  [
    "not symmetric",
    [
      [1, 0.5],
      [0.4, 1],
    ],
  ],
  [
    "not one on the diagonal",
    [
      [2, 0],
      [0, 1],
    ],
  ],
  [
    "indefinite",
    [
      [1, 0.9, 0.9],
      [0.9, 1, -0.9],
      [0.9, -0.9, 1],
    ],
  ],
])("a correlation that is %s is refused", (_, correlation) => {
  expect(() => sample(correlation)).toThrow(RangeError);
});
