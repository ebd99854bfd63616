import fc from "fast-check";
import { expect, test } from "vitest";
import { verdictOf } from "./verdict.js";

test.each([
  [{ low: 3.1, high: 3.4 }, { maximum: 3 }, "over"],
  [{ low: 2.9, high: 3.1 }, { maximum: 3 }, "uncertain"],
  [{ low: 2.5, high: 3 }, { maximum: 3 }, "within"],
  [{ low: 3, high: 3.2 }, { maximum: 3 }, "uncertain"],
  [{ low: 0.1, high: 0.4 }, { minimum: 0.5, maximum: 3 }, "under"],
  [{ low: 0.4, high: 0.6 }, { minimum: 0.5, maximum: 3 }, "uncertain"],
  [{ low: 0.5, high: 3 }, { minimum: 0.5, maximum: 3 }, "within"],
  [{ low: 0.1, high: 4 }, { minimum: 0.5, maximum: 3 }, "uncertain"],
  [{ low: -7, high: 7 }, {}, "within"],
  [{ low: Number.NaN, high: 1 }, { maximum: 3 }, "uncertain"],
  [{ low: Number.NaN, high: Number.NaN }, {}, "uncertain"],
] as const)("%o against %o is %s", (interval, limit, verdict) => {
  expect(verdictOf(interval, limit)).toBe(verdict);
});

test("mirroring interval and limit swaps over and under", () => {
  const ends = fc.tuple(fc.double({ noNaN: true }), fc.double({ noNaN: true })).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
  fc.assert(
    fc.property(ends, ends, ([low, high], [minimum, maximum]) => {
      const mirrored = verdictOf({ low: -high, high: -low }, { minimum: -maximum, maximum: -minimum });
      const swapped = { over: "under", under: "over", within: "within", uncertain: "uncertain" }[mirrored];
      expect(verdictOf({ low, high }, { minimum, maximum })).toBe(swapped);
    }),
  );
});
