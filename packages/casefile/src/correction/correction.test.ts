import { plan, predict } from "@halfturn/engine/correction";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { degreesToRadians } from "@halfturn/engine/units";
import { expect, test } from "vitest";
import { planToJson } from "../contract/plan-to-json.js";
import { latestGaugings } from "../convert/latest-gaugings.js";
import { toCorrectionInput } from "../convert/to-correction-input.js";
import { exampleCase } from "../example-cases.test-support.js";
import { restore } from "../restore/restore.js";
import type { Case } from "../schema/case.js";
import { serialise } from "../serialise/serialise.js";
import { beforeAfterPairs } from "./before-after-pairs.js";
import { judgedCorrections } from "./judged-corrections.js";
import { isStocked, parseChange, parseChanges } from "./parse-change.js";
import { recordCorrection } from "./record-correction.js";

const SETTINGS = { defaults: DEFAULT_LIMITS, draws: 500, seed: 1 };
const DATE = "2026-02-03T08:00:00Z";
const document = exampleCase("two-piece");
const input = toCorrectionInput(document, SETTINGS);
const basis = latestGaugings(document);
/** Degrees and metres through one or two products. */
const ROUNDING = 1e-12;

test("millimetres and degrees become metres and radians, and what is not measured stays null", () => {
  const [rear] = input.drivelines;
  expect(rear?.supports).toEqual([{ jointId: "J2", bearingToJoint: 0.12, bearingIs: "source-side", mounted: "below-crossmember" }]);
  expect(rear?.slips).toEqual([{ sectionId: "back", engaged: 0.07, minimumEngaged: 0.045, inwardTravel: 0.03 }]);
  expect(rear?.axle?.caster).toBeNull();
  expect(input.states[1]?.axleTravel).toBe(-0.04);
  expect(Math.abs((input.states[1]?.pinionPitch ?? 0) - degreesToRadians(0.6))).toBeLessThan(ROUNDING);
  const bare = toCorrectionInput({ ...document, drivelines: document.drivelines.map(({ axle: _axle, ...rest }) => rest) }, SETTINGS);
  expect(bare.drivelines[0]?.axle).toBeNull();
});

test("a change is read with its unit and sign", () => {
  const amount = (text: string) => {
    const parsed = parseChange(text, input);
    return parsed.ok ? parsed.change.amount : parsed.problem.code;
  };
  expect(Math.abs(Number(amount("wedge=-2deg")) + Math.PI / 90)).toBeLessThan(ROUNDING);
  expect(amount("bearing-drop=-6mm")).toBe(-0.006);
  expect(amount("bearing-drop = 3 mm")).toBe(0.003);
  expect([amount("turn-front=1step"), amount("turn-front=-2 steps")]).toEqual([1, -2]);
});

test.each([
  ["wedge", "change-form", {}],
  ["wegde=2deg", "unknown-adjuster", { got: "wegde", suggestion: "wedge" }],
  ["wedge=2", "unit-missing", { expected: "deg" }],
  ["wedge=2mm", "wrong-unit", { expected: "deg" }],
  ["bearing-drop=2deg", "wrong-unit", { expected: "mm" }],
  ["turn-front=2deg", "wrong-unit", { expected: "step" }],
  ["turn-front=1.5steps", "steps-not-whole", {}],
  ["wedge=2.5.1deg", "amount-unreadable", {}],
  ["wedge=8deg", "beyond-stock", { amount: 8, minimum: -3, maximum: 3 }],
  ["bearing-drop=-9mm", "beyond-fitted", { amount: -9, fitted: 6 }],
])("%s is refused as %s", (text, code, params) => {
  expect(parseChange(text, input)).toMatchObject({ ok: false, problem: { code, params } });
});

test("what is in stock is known from what could be cut to measure", () => {
  const stocked = (text: string) => {
    const parsed = parseChange(text, input);
    return parsed.ok && isStocked(parsed.change, input);
  };
  expect(["wedge=2deg", "wedge=0deg", "bearing-drop=-6mm", "turn-front=3steps"].map(stocked)).toEqual([true, true, true, true]);
  expect(["wedge=1.5deg", "bearing-drop=-5mm"].map(stocked)).toEqual([false, false]);
});

test("one adjuster is named once, and a case without any says so", () => {
  expect(parseChanges(["wedge=1deg", "wedge=1deg"], input)).toMatchObject({ ok: false, problems: [{ code: "adjuster-twice" }] });
  expect(parseChange("wedge=1deg", { ...input, adjusters: [] })).toMatchObject({ problem: { code: "no-adjusters" } });
});

test("a nose-up wedge adds its angle to the pinion's inclination, whichever way the driveline runs", () => {
  const wedge = { adjusterId: "wedge", amount: degreesToRadians(2) };
  for (const runs of ["rearward", "forward"] as const) {
    const turned = { ...document, drivelines: document.drivelines.map((driveline) => ({ ...driveline, runs })) };
    const { states: _states, ...still } = turned;
    const from = toCorrectionInput(still, SETTINGS);
    const inclination = (changes: readonly { readonly adjusterId: string; readonly amount: number }[]) => {
      const predicted = predict(from, changes);
      if (!predicted.ok) throw new Error(JSON.stringify(predicted.reasons));
      return predicted.value.states[0]?.drivelines[0]?.shafts.at(-1)?.inclination?.value ?? Number.NaN;
    };
    expect(Math.abs(inclination([wedge]) - inclination([]) - wedge.amount)).toBeLessThan(1e-9);
  }
});

async function chosen(from: Case): Promise<Case> {
  const found = await plan(input, { maxChanges: 1, count: 1, detailDraws: 200, rankDraws: 50 });
  if (!found.ok) throw new Error(JSON.stringify(found.reasons));
  const [best] = found.value.plans;
  if (!best) throw new Error("no plan");
  return recordCorrection(from, { input, basis, ...best }, DATE);
}

test("the plan contract has its keys, and no infinity that JSON would lose", async () => {
  const found = await plan(input, { maxChanges: 1, count: 1, detailDraws: 200, rankDraws: 50 });
  if (!found.ok) throw new Error(JSON.stringify(found.reasons));
  const json = planToJson(found.value, { document, input, chosen: basis, taught: { kind: "nothing" } });
  expect(Object.keys(json).slice(0, 5)).toEqual(["format", "version", "seed", "examined", "plans"]);
  expect(json.plans[0]?.states.map(({ id }) => id)).toEqual(["normal", "laden", "pulling-away"]);
  expect(Object.keys(json.plans[0]?.states[0]?.drivelines[0]?.slipTravelMm ?? {})).toEqual(["value", "u", "interval95"]);
  expect(JSON.parse(JSON.stringify(json))).toEqual(json);
});

test("a plan is recorded, replaces an unmade one from the same gaugings, and the case still restores with keys of its own", async () => {
  const own = { ...document, "x-own": { kept: true } } as Case;
  const once = await chosen(own);
  const twice = await chosen(once);
  expect([once.corrections?.length, twice.corrections?.length]).toEqual([1, 1]);
  expect(once.corrections?.[0]).toMatchObject({ state: "chosen", chosenAt: DATE, basis: [{ driveline: "rear", gauging: 0 }] });
  // What a report prints of it without working it out again.
  const [foretold] = once.corrections?.[0]?.predicted[0]?.drivelines ?? [];
  expect(foretold?.shafts?.map(({ id }) => id)).toEqual(["source", "front", "back", "driven"]);
  expect(foretold?.highestSpeed).toMatchObject({ shaftRpm: 3600, drive: [{ section: "front" }, { section: "back" }] });
  expect(once.corrections?.[0]?.probabilityWithin).toBeGreaterThanOrEqual(0);
  const text = serialise(twice, own);
  const restored = restore(text);
  expect(restored.ok ? restored.case : restored.problems).toMatchObject({ "x-own": { kept: true } });
  expect(restored.ok && serialise(restored.case)).toBe(text);
});

test("a later gauging makes a pair of it, and counts what was fitted", () => {
  const changes = [{ adjusterId: "bearing-drop", amount: -0.006 }];
  const predicted = predict(input, changes);
  if (!predicted.ok) throw new Error(JSON.stringify(predicted.reasons));
  const recorded = recordCorrection(document, { input, basis, changes, states: predicted.value.states, instructions: [] }, DATE);
  expect(recorded.corrections?.[0]?.changes).toEqual([{ adjuster: "bearing-drop", amount: -6, unit: "mm" }]);
  expect(beforeAfterPairs(recorded, SETTINGS)).toEqual([]);
  expect(judgedCorrections(recorded, SETTINGS)).toEqual([
    { correction: 0, before: [{ driveline: 0, gauging: 0 }], after: [], judged: null },
  ]);
  const [first] = document.gauging ?? [];
  if (!first) throw new Error("the example was gauged");
  const again: Case = { ...recorded, gauging: [first, { ...first, stage: "after" }] };
  const [pair] = beforeAfterPairs(again, SETTINGS);
  expect(pair).toMatchObject({ correction: 0, gaugings: [{ driveline: 0, gauging: 1 }], changes });
  expect(Object.keys(pair?.after ?? {})).toEqual(["rear"]);
  // Nothing moved, so the foretold change has not come.
  const [judged] = judgedCorrections(again, SETTINGS);
  expect(judged).toMatchObject({ after: [{ gauging: 1 }], judged: { ok: true, value: { verdict: "differs" } } });
  const drooped: Case = {
    ...recorded,
    gauging: [first, { ...first, stage: "after", state: { ...first.state, rideHeight: "drooped" } }],
  };
  expect(judgedCorrections(drooped, SETTINGS)).toMatchObject([{ after: [{ gauging: 1 }], judged: null }]);
  const fitted = (of: Case) => {
    const adjuster = toCorrectionInput(of, SETTINGS).adjusters.find(({ id }) => id === "bearing-drop");
    return adjuster?.kind === "support-drop" ? adjuster.fitted : null;
  };
  // 6 mm as found, taken out before the second gauging.
  expect([fitted(recorded), fitted(again)]).toEqual([0.006, 0]);
});
