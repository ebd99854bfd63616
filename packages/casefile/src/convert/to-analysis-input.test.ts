import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { expect, test } from "vitest";
import { exampleCase } from "../example-cases.test-support.js";
import type { Case } from "../schema/case.js";
import { acceptedCodes, toAnalysisInput } from "./to-analysis-input.js";
import { toDriveline } from "./to-driveline.js";
import { toGauging } from "./to-gauging.js";

const settings = { defaults: DEFAULT_LIMITS, draws: 100, seed: 3 };

test("driveline, gauging, limits and speed of one case together", () => {
  const document = exampleCase("one-piece");
  expect(toAnalysisInput(document, { driveline: 0, gauging: 1 }, settings)).toEqual({
    driveline: toDriveline(document, 0, 1),
    gauging: toGauging(document, 1),
    limits: DEFAULT_LIMITS,
    maxShaftSpeed: 4200,
    accepted: [],
    draws: 100,
    seed: 3,
    path: "drivelines[0]",
  });
});

test("a driveline never gauged has no readings, and a speed not written is not known", () => {
  const { vehicle: _, ...document } = exampleCase("one-piece");
  const input = toAnalysisInput(document, { driveline: 0, gauging: null }, settings);
  expect([input.gauging.readings, input.gauging.headings, input.maxShaftSpeed]).toEqual([[], [], null]);
});

test("findings accepted in the case and just now, each once; a code that means nothing accepts nothing", () => {
  const accepted = (code: string) => ({ code, at: "2026-01-02T10:00:00Z" });
  const document: Case = {
    ...exampleCase("one-piece"),
    acceptedFindings: [accepted("gauging.wheels-hanging"), accepted("gauging.no-such-thing")],
  };
  expect(acceptedCodes(document)).toEqual(["gauging.wheels-hanging"]);
  const both = { ...settings, accepted: ["gauging.wheels-hanging", "gauging.not-at-ride-height"] as const };
  expect(toAnalysisInput(document, { driveline: 0, gauging: 0 }, both).accepted).toEqual([
    "gauging.wheels-hanging",
    "gauging.not-at-ride-height",
  ]);
});
