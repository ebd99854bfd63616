import { expect, test } from "vitest";
import { momentsOf, summariseSample } from "./sample-summary.js";

test("mean and standard deviation, exact in small numbers and beside a large offset", () => {
  expect(momentsOf(Float64Array.of(2, 4, 4, 4, 5, 5, 7, 9))).toEqual({ mean: 5, standardDeviation: Math.sqrt(32 / 7) });
  expect(momentsOf(Float64Array.of(1e9 - 1, 1e9, 1e9 + 1))).toEqual({ mean: 1e9, standardDeviation: 1 });
});

test("a lopsided sample has a shortest interval at its dense end", () => {
  const squares = Float64Array.from({ length: 100 }, (_, i) => (i + 1) ** 2);
  const { symmetric, shortest } = summariseSample(squares, 0.9);
  expect(symmetric).toEqual({ low: 25, high: 95 ** 2 });
  expect(shortest).toEqual({ low: 1, high: 91 ** 2 });
});
