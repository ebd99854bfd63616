import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { spread } from "./spread.js";

const ROUNDING = 1e-9;
const items = fc.array(
  fc.record({ wanted: fc.double({ min: -50, max: 650, noNaN: true }), size: fc.double({ min: 5, max: 80, noNaN: true }) }),
  { maxLength: 8 },
);
const sorted = items.map((list) => [...list].sort((a, b) => a.wanted - b.wanted));
const moved = (list: readonly { wanted: number }[], middles: readonly number[]): number =>
  middles.reduce((sum, middle, k) => sum + (middle - (list[k]?.wanted ?? 0)) ** 2, 0);

describe("spread", () => {
  test("keeps order, distance and bounds", () => {
    fc.assert(
      fc.property(sorted, (list) => {
        const middles = spread(list, 0, 600, 4);
        if (!middles) return;
        middles.forEach((middle, k) => {
          const half = (list[k]?.size ?? 0) / 2;
          expect(middle - half).toBeGreaterThanOrEqual(-ROUNDING);
          expect(middle + half).toBeLessThanOrEqual(600 + ROUNDING);
          if (k > 0) expect(middle - half - 4).toBeGreaterThanOrEqual((middles[k - 1] as number) + (list[k - 1]?.size ?? 0) / 2 - ROUNDING);
        });
      }),
    );
  });

  test("no small allowed move of any label makes the sum of squared moves less", () => {
    fc.assert(
      fc.property(sorted, fc.nat(7), fc.constantFrom(-0.5, 0.5), (list, which, step) => {
        const middles = spread(list, 0, 600, 4);
        if (!middles || which >= list.length) return;
        const other = middles.map((middle, k) => (k === which ? middle + step : middle));
        const allowed = other.every((middle, k) => {
          const half = (list[k]?.size ?? 0) / 2;
          const before = k === 0 ? 0 : (other[k - 1] as number) + (list[k - 1]?.size ?? 0) / 2 + 4;
          return middle - half >= before && middle + half <= 600;
        });
        if (allowed) expect(moved(list, other)).toBeGreaterThanOrEqual(moved(list, middles) - ROUNDING);
      }),
    );
  });

  test("labels that are free stay where they want to be; two that collide share the way", () => {
    expect(
      spread(
        [
          { wanted: 50, size: 20 },
          { wanted: 200, size: 20 },
        ],
        0,
        300,
        0,
      ),
    ).toEqual([50, 200]);
    expect(
      spread(
        [
          { wanted: 100, size: 20 },
          { wanted: 100, size: 20 },
        ],
        0,
        300,
        0,
      ),
    ).toEqual([90, 110]);
  });

  test("says so when they do not fit", () => {
    expect(
      spread(
        [
          { wanted: 0, size: 60 },
          { wanted: 0, size: 60 },
        ],
        0,
        100,
        0,
      ),
    ).toBeNull();
  });
});
