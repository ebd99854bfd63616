import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { degreesToRadians } from "@halfturn/engine/units";
import { expect, test } from "vitest";
import { newCase } from "../layout/new-case.js";
import type { Case, CaseLimits } from "../schema/case.js";
import { limits as limitsSchema } from "../schema/limits.js";
import { toLimits } from "./to-limits.js";

const withLimits = (limits: CaseLimits): Case => ({
  ...newCase({ id: "a", title: "a", layout: "one-piece", createdAt: "2026-01-02" }),
  limits,
});

test("without overrides the defaults stand", () => {
  expect(toLimits(withLimits({}), DEFAULT_LIMITS)).toEqual(DEFAULT_LIMITS);
});

test("an override carries the source that the case names, or its place in the file", () => {
  const named = toLimits(withLimits({ source: "Maker's sheet", equivalentMaximumDeg: 2 }), DEFAULT_LIMITS);
  expect(named).toEqual({ ...DEFAULT_LIMITS, equivalentAngle: { value: degreesToRadians(2), source: "Maker's sheet" } });
  const unnamed = toLimits(withLimits({ inertiaCoastRadS2: 450 }), DEFAULT_LIMITS);
  expect(unnamed.inertiaCoast).toEqual({ value: 450, source: "limits.inertiaCoastRadS2" });
});

test("every key of the file replaces one limit of its own, and together they replace them all", () => {
  const keys = Object.keys(limitsSchema.shape).filter((key) => key !== "source");
  const leaves = (set: object): readonly string[] =>
    Object.entries(set).flatMap(([key, value]: [string, object]) =>
      "source" in value ? [`${key} ${JSON.stringify(value)}`] : leaves(value).map((leaf) => `${key}.${leaf}`),
    );
  const before = leaves(DEFAULT_LIMITS);
  const changed = keys.map((key) => {
    const after = leaves(toLimits(withLimits({ [key]: 7.125 }), DEFAULT_LIMITS));
    const different = after.flatMap((leaf, k) => (leaf === before[k] ? [] : [k]));
    expect(different, key).toHaveLength(1);
    expect(after[different[0] ?? 0]).toContain(`"limits.${key}"`);
    return different[0];
  });
  expect(new Set(changed).size).toBe(before.length);
});
