import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { expect, test } from "vitest";
import { exampleCase } from "../example-cases.test-support.js";
import type { Case, CaseReading } from "../schema/case.js";
import { basisGaugings, correctionBasis } from "./correction-basis.js";
import { taughtGeometry } from "./taught-geometry.js";

const SETTINGS = { defaults: DEFAULT_LIMITS, draws: 100, seed: 1 };
const corrected = exampleCase("corrected");

test("a correction that was gauged again teaches, and what it taught is what the next plan goes by", () => {
  const taught = taughtGeometry(corrected, SETTINGS);
  expect(taught).toMatchObject({ kind: "learned", from: [0] });
  const { input } = correctionBasis(corrected, SETTINGS);
  expect(taught.kind === "learned" && input.learned).toEqual(taught.kind === "learned" && taught.geometry);
});

test("without a correction, or without a gauging after it, nothing is taught", () => {
  expect(taughtGeometry(exampleCase("one-piece"), SETTINGS)).toEqual({ kind: "nothing" });
  const [first] = corrected.gauging ?? [];
  const early: Case = { ...corrected, gauging: first ? [first] : [] };
  expect(taughtGeometry(early, SETTINGS)).toEqual({ kind: "nothing" });
  expect(correctionBasis(early, SETTINGS).input.learned).toBeUndefined();
});

test("a pinion that turned the other way teaches nothing: the lengths stay as taped", () => {
  const backwards = (reading: CaseReading): CaseReading =>
    "at" in reading && reading.at === "driven" && "lower" in reading
      ? { ...reading, deg: reading.deg + 6 }
      : "face" in reading && reading.at === "driven"
        ? { ...reading, deg: reading.deg + 6 }
        : reading;
  const gauging = (corrected.gauging ?? []).map((one) => (one.stage === "after" ? { ...one, readings: one.readings.map(backwards) } : one));
  const misfit: Case = { ...corrected, gauging };
  expect(taughtGeometry(misfit, SETTINGS)).toMatchObject({
    kind: "misfit",
    from: [0],
    lookAt: ["amount-fitted-differs", "axle-not-seated", "other-ride-height", "gauge-placing"],
  });
  expect(correctionBasis(misfit, SETTINGS).input.learned).toBeUndefined();
});

test("a gauging asked for speaks for its own driveline, the latest for the others", () => {
  const two = exampleCase("four-wheel-drive");
  const again: Case = { ...two, gauging: [...(two.gauging ?? []), ...(two.gauging ?? []).map((one) => ({ ...one }))] };
  const places = (gauging?: number) => basisGaugings(again, gauging).map((one) => one.gauging);
  const [rear, front] = places();
  expect([rear, front]).toEqual([2, 3]);
  expect(places(0)).toEqual([0, 3]);
  expect(places(1)).toEqual([2, 1]);
});
