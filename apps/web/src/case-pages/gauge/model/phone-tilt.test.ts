import { cosDegrees, degreesToRadians, sinDegrees } from "@halfturn/engine/units";
import fc from "fast-check";
import { expect, test } from "vitest";
import { displayed, phoneReading, recentSlopes, steadied, type UpVector, upOf } from "./phone-tilt.js";

/** Rounding of a few trigonometric functions in degrees. */
const ROUNDING_DEG = 1e-9;

const slopeOf = (up: UpVector, pose: "along" | "across"): number => {
  const reading = phoneReading(up, pose);
  return reading.ok ? reading.slopeDeg : Number.NaN;
};

const slope = fc.double({ min: -25, max: 25, noNaN: true });
const roll = fc.double({ min: -40, max: 40, noNaN: true });

test("up by the browser's tilts is a unit vector, with the screen up when lying and the top up when held upright", () => {
  expect(upOf(0, 0)).toEqual({ x: -0, y: 0, z: 1 });
  expect(upOf(90, 0).y).toBe(1);
  expect(upOf(0, -90).x).toBe(1);
  fc.assert(
    fc.property(fc.double({ min: -180, max: 180, noNaN: true }), fc.double({ min: -90, max: 90, noNaN: true }), (beta, gamma) => {
      const { x, y, z } = upOf(beta, gamma);
      expect(Math.abs(Math.hypot(x, y, z) - 1)).toBeLessThan(ROUNDING_DEG);
    }),
  );
});

test("on its long edge the phone reads the slope of the shaft, however it leans back, either edge down", () => {
  fc.assert(
    fc.property(slope, roll, fc.constantFrom(1, -1), (deg, lean, edge) => {
      // The phone's top rises by `deg` where it points to the reader's left, and falls by it where it points to the right.
      const rises = edge * deg;
      const up = { x: edge * cosDegrees(rises) * cosDegrees(lean), y: sinDegrees(rises), z: cosDegrees(rises) * sinDegrees(lean) };
      expect(Math.abs(slopeOf(up, "along") - deg)).toBeLessThan(ROUNDING_DEG);
    }),
  );
});

test("against a square face it reads the slope of the shaft behind, either end up", () => {
  fc.assert(
    fc.property(slope, roll, fc.constantFrom(1, -1), (deg, lean, end) => {
      const rises = -end * deg;
      const up = { x: sinDegrees(rises), y: end * cosDegrees(rises) * cosDegrees(lean), z: cosDegrees(rises) * sinDegrees(lean) };
      expect(Math.abs(slopeOf(up, "across") - deg)).toBeLessThan(ROUNDING_DEG);
    }),
  );
});

test("turned round on the same spot, the sum is twice what the phone adds by itself", () => {
  const tilted = (deg: number): UpVector => ({ x: cosDegrees(deg), y: Math.sin(degreesToRadians(deg)), z: 0 });
  const first = slopeOf(tilted(2 + 0.3), "along");
  const turned = slopeOf(tilted(-2 + 0.3), "along");
  expect(Math.abs((first + turned) / 2 - 0.3)).toBeLessThan(ROUNDING_DEG);
});

test("a phone lying flat or standing on the wrong edge is told to be held otherwise", () => {
  expect(phoneReading({ x: 0, y: 0, z: 1 }, "along")).toEqual({ ok: false, fault: "lying-flat" });
  expect(phoneReading({ x: 0, y: 1, z: 0 }, "along")).toEqual({ ok: false, fault: "not-on-edge" });
  expect(phoneReading({ x: 1, y: 0, z: 0 }, "across")).toEqual({ ok: false, fault: "not-on-edge" });
});

const timed = (...slopes: readonly (readonly [atMs: number, slopeDeg: number])[]) => slopes.map(([atMs, slopeDeg]) => ({ atMs, slopeDeg }));

test("a while of readings has a middle and a spread", () => {
  expect(steadied([])).toBeNull();
  expect(steadied(timed([0, 2], [10, 3], [20, 4]))).toEqual({ slopeDeg: 3, spreadDeg: 1 });
});

test("a phone that lies still and sends nothing new keeps its last reading, and forgets the way there", () => {
  const moved = timed([0, 9], [100, 5], [500, 2.4]);
  expect(recentSlopes(moved, 600)).toEqual(moved);
  expect(recentSlopes(moved, 1000)).toEqual(timed([100, 5], [500, 2.4]));
  expect(recentSlopes(moved, 5000)).toEqual(timed([500, 2.4]));
  expect(recentSlopes([], 5000)).toEqual([]);
});

test("what is kept of a slope is its size in tenths", () => {
  expect(displayed(-2.3700001)).toBe(2.4);
  expect(displayed(0.04)).toBe(0);
});
