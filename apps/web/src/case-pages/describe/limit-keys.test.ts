import { newCase, restore, serialise } from "@halfturn/casefile";
import { expect, test } from "vitest";
import { ACCELERATION_LIMITS, BENCH_LIMITS, builtInLimit, COMMON_LIMITS, limitBounds, OTHER_JOINT_LIMITS } from "./limit-keys.js";

const ALL = [...COMMON_LIMITS, ...ACCELERATION_LIMITS, ...OTHER_JOINT_LIMITS, ...BENCH_LIMITS];
const document = newCase({ id: "c", title: "t", layout: "one-piece", createdAt: "2026-02-03T08:00:00Z" });
const isTaken = (limits: object) => restore(serialise({ ...document, limits })).ok;

test("every limit of the case file can be typed, and the built-in one is within its bounds", () => {
  expect(new Set(ALL).size).toBe(16);
  for (const key of ALL) expect(isTaken({ [key]: builtInLimit(key) }), key).toBe(true);
  expect(builtInLimit("crossMinimumDeg")).toBe(0.5);
});

test("what the bounds allow the case file takes, and what they refuse beside a built-in limit it refuses", () => {
  expect(limitBounds("crossMaximumDeg", {})).toEqual({ minimum: 0.5, below: 90 });
  expect(isTaken({ crossMaximumDeg: 0.5 })).toBe(true);
  expect(isTaken({ crossMaximumDeg: 0.4 })).toBe(false);
  expect(limitBounds("crossMinimumDeg", { crossMaximumDeg: 6 })).toEqual({ minimum: 0, below: 90, maximum: 6 });
  expect(isTaken({ crossMaximumDeg: 6, crossMinimumDeg: 6.1 })).toBe(false);
  expect(limitBounds("benchAcceptedDeg", { benchMetDeg: 0.6 })).toEqual({ minimum: 0.6, below: 90 });
  expect(limitBounds("jointAccelerationRadS2", {})).toEqual({ above: 0, maximum: 1e6 });
});
