import { readFileSync } from "node:fs";
import { analyseCase, examples, restore } from "@halfturn/casefile";
import type { DrivelineAnalysis } from "@halfturn/engine/analysis";
import { degreesToRadians } from "@halfturn/engine/units";
import { numbersOf } from "@halfturn/words";
import { expect, test } from "vitest";
import { type Headline, headlineOf } from "./headline.js";
import { HEADLINES } from "./headline-words.js";

const analysisOf = (name: string): DrivelineAnalysis => {
  const restored = restore(readFileSync(new URL(examples.find((one) => one.name === name)?.url ?? ""), "utf8"));
  if (!restored.ok) throw new Error(name);
  const [first] = analyseCase(restored.case, {}, { draws: 500, seed: 1, accepted: [] });
  if (!first) throw new Error(name);
  return first.analysis;
};
const said = (analysis: DrivelineAnalysis): Headline =>
  headlineOf(analysis, { words: HEADLINES.en, numbers: numbersOf("en"), jointName: (id) => id });

const corrected = analysisOf("corrected");
type Joint = DrivelineAnalysis["joints"][number];
const withJoints = (change: (joint: Joint, k: number) => Partial<Joint>): DrivelineAnalysis => ({
  ...corrected,
  joints: corrected.joints.map((joint, k) => ({ ...joint, ...change(joint, k) })),
});
const at = (degrees: number) => {
  const value = degreesToRadians(degrees);
  return { value, u: 0.001, low: value - 0.002, high: value + 0.002 };
};

test("a corrected driveline is within its limits, with what is left", () => {
  expect(said(corrected)).toMatchObject({ verdict: "within", text: expect.stringMatching(/within its limits.*\d\.\d\d°/) });
});

test("the joint furthest over its limit is the one named, with both numbers", () => {
  const angles = [4.1, 5.2, 1];
  const steep = withJoints((_, k) => ({
    operatingAngle: at(angles[k] ?? 0),
    maximum: degreesToRadians(3.9),
    verdict: (angles[k] ?? 0) > 3.9 ? "over" : "within",
  }));
  expect(said(steep)).toEqual({ verdict: "over", text: "J2 runs at 5.20°, more than the 3.90° it may." });
});

test("a joint near its minimum is held against the minimum", () => {
  const flat = withJoints((_, k) => (k === 0 ? { operatingAngle: at(0.45), minimum: degreesToRadians(0.5), verdict: "uncertain" } : {}));
  expect(said(flat).text).toContain("0.50°");
});

test("what is over goes before what is unsure, wherever each stands", () => {
  const unsure = withJoints((_, k) => (k === 0 ? { verdict: "uncertain" } : {}));
  const both: DrivelineAnalysis = { ...unsure, cancellation: { ...unsure.cancellation, verdict: "over" } };
  expect(said(both).verdict).toBe("over");
  expect(said(both).text).toContain("do not cancel");
});

test("nothing is claimed of what was withheld or not gauged", () => {
  expect(said({ ...corrected, withheld: true }).verdict).toBe("withheld");
  expect(said(withJoints(() => ({ operatingAngle: null, verdict: "not-gauged" }))).text).toBe("Nothing has been gauged yet.");
  expect(said(withJoints((_, k) => (k === 1 ? { operatingAngle: null, verdict: "not-gauged" } : {}))).text).toContain("J2");
  const unphased = { ...corrected, cancellation: { ...corrected.cancellation, equivalentAngle: null, verdict: "not-gauged" as const } };
  expect(said(unphased)).toMatchObject({ verdict: "not-gauged", text: expect.stringContaining("without the phasing") });
});
