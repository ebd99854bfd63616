import { describe, expect, test } from "vitest";
import { normalDeviates, uniformDeviates } from "../uncertainty/index.js";
import { boundedInterval, regionIncludesZero } from "./bounded-interval.js";

describe("the 95 % region of a plane vector", () => {
  const round = { xx: 1, xy: 0, yy: 1 };
  test("is a circle of radius 2.4477 for a round unit variance", () => {
    expect(regionIncludesZero(2.4477, 0, round)).toBe(true);
    expect(regionIncludesZero(0, 2.4478, round)).toBe(false);
    expect(regionIncludesZero(1.731, 1.731, round)).toBe(false);
    expect(regionIncludesZero(1.73, 1.73, round)).toBe(true);
  });
  test("is an interval of 1.96 for a vector that varies along a line", () => {
    const line = { xx: 0.5, xy: 0.5, yy: 0.5 };
    expect(regionIncludesZero(1.959 / Math.SQRT2, 1.959 / Math.SQRT2, line)).toBe(true);
    expect(regionIncludesZero(1.961 / Math.SQRT2, 1.961 / Math.SQRT2, line)).toBe(false);
    expect(regionIncludesZero(1, -1, line)).toBe(false);
  });
  test("is the vector itself where nothing varies", () => {
    const none = { xx: 0, xy: 0, yy: 0 };
    expect(regionIncludesZero(0, 0, none)).toBe(true);
    expect(regionIncludesZero(1e-12, 0, none)).toBe(false);
  });
});

describe("the interval of a length", () => {
  /** 3,000 trials: three standard deviations of a share near 95 % are 1.2 %. */
  const BINOMIAL = 0.012;
  const TRIALS = 3000;

  /** A vector of unit scatter along the truth and `across` at right angles to it. */
  function coverage(truth: number, across: number): number {
    const uniform = uniformDeviates(42);
    const normal = normalDeviates(uniform);
    const noise = Array.from({ length: 1000 }, () => [normal(), across * normal()] as const);
    let hits = 0;
    for (let trial = 0; trial < TRIALS; trial++) {
      const x = truth + normal();
      const y = across * normal();
      const value = Math.hypot(x, y);
      const draws = Float64Array.from(noise, ([dx, dy]) => Math.hypot(x + dx, y + dy));
      const { low, high } = boundedInterval(
        value,
        regionIncludesZero(x, y, { xx: 1, xy: 0, yy: across ** 2 }),
        draws,
        Float64Array.from(draws),
      );
      if (low <= truth && truth <= high) hits++;
    }
    return hits / TRIALS;
  }

  describe.each([1, 0.5, 0.1, 0])("with %f times the scatter across", (across) => {
    test.each([3, 4, 8])("covers a truth %i standard uncertainties from zero in 95 % of trials", (truth) => {
      expect(Math.abs(coverage(truth, across) - 0.95)).toBeLessThan(BINOMIAL + 0.01);
    });
    test.each([0, 0.5, 1, 2])("covers a truth %f standard uncertainties from zero at least as often", (truth) => {
      expect(coverage(truth, across)).toBeGreaterThan(0.95 - BINOMIAL);
    });
  });
  test("has no lower bound where zero is plausible", () => {
    const draws = Float64Array.from({ length: 100 }, (_, k) => (k + 1) / 100);
    expect(boundedInterval(0.1, true, draws, draws)).toEqual({ low: 0, high: 0.98 });
  });
});
