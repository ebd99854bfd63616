import type { PlannedChange, PlanResult, RankedChoice, StateLimitUse } from "@halfturn/engine/correction";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { degreesToRadians } from "@halfturn/engine/units";
import { expect, test } from "vitest";
import { correctionBasis } from "../correction/correction-basis.js";
import { exampleCase } from "../example-cases.test-support.js";
import { planToJson } from "./plan-to-json.js";

const document = exampleCase("two-piece");
const basis = correctionBasis(document, { defaults: DEFAULT_LIMITS, draws: 100, seed: 3 });

const wedge: PlannedChange = { adjusterId: "wedge", kind: "axle-wedge", amount: degreesToRadians(2), unit: "rad" };
const drop: PlannedChange = { adjusterId: "bearing-drop", kind: "support-drop", amount: -0.003, unit: "m" };
const choice = (changes: readonly PlannedChange[], over: Partial<RankedChoice> = {}): RankedChoice => ({
  changes,
  probabilityWithin: 0.5,
  probabilityOfLimits: 0.75,
  labour: 1.5,
  margin: 0.25,
  ...over,
});
const angleUse: StateLimitUse = {
  limit: "joint-over",
  of: "J2",
  state: "laden",
  drivelineId: "rear",
  value: degreesToRadians(6),
  bound: degreesToRadians(5),
  margin: -0.2,
  slipTravel: 0.001,
};
const accelerationUse: StateLimitUse = { ...angleUse, limit: "inertia-coast", of: "back", value: 600, bound: 500 };

const result: PlanResult = {
  examined: 12,
  plans: [
    {
      ...choice([drop, wedge], { probabilityWithin: null }),
      tightest: angleUse,
      states: [],
      instructions: [{ code: "gauge-again", params: {}, cautions: ["prove-from-slow"] }],
    },
  ],
  blockedBy: [
    { kind: "limit", use: accelerationUse },
    { kind: "hard", reason: { code: "correction.slip-bottoms", path: "drivelines[0]", params: { slipTravelMm: -31 } }, changes: [wedge] },
  ],
  nearest: choice([wedge]),
  doingNothing: { ...choice([], { margin: Number.NEGATIVE_INFINITY }), tightest: null },
  bestSingleChange: null,
  bestWithoutAxle: choice([drop]),
  optima: [
    { adjusterId: "wedge", amount: degreesToRadians(1.25), unit: "rad", margin: 0.1 },
    { adjusterId: "bearing-drop", amount: -0.0045, unit: "m", margin: 0.2 },
  ],
  missing: [{ of: "slip", path: "drivelines[0]", effect: null }],
  notUsed: [{ code: "correction.caster-not-given", path: "adjusters[2]", params: { adjuster: "wedge" } }],
  leftOut: [{ code: "correction.stop-finding", path: "drivelines[1]", params: { driveline: "front" } }],
};

/** Degrees through radians and back. */
const ROUNDING = 1e-12;

test("the printed contract, key by key and in order", () => {
  const drops = { adjuster: "bearing-drop", amount: -3, unit: "mm" };
  const wedges = { adjuster: "wedge", amount: 2, unit: "deg" };
  const json = planToJson(result, basis);
  const tightest = json.plans[0]?.tightest;
  expect(Math.abs((tightest?.valueDeg ?? 0) - 6)).toBeLessThan(ROUNDING);
  expect(Math.abs((tightest?.limitDeg ?? 0) - 5)).toBeLessThan(ROUNDING);
  const expected = {
    format: "halfturn-plan",
    version: 1,
    seed: 3,
    examined: 12,
    plans: [
      {
        changes: [drops, wedges],
        probabilityWithin: null,
        probabilityOfLimits: 0.75,
        labour: 1.5,
        margin: 0.25,
        tightest: {
          limit: "joint-over",
          of: "J2",
          state: "laden",
          driveline: "rear",
          valueDeg: tightest?.valueDeg,
          limitDeg: tightest?.limitDeg,
          margin: -0.2,
        },
        states: [],
        instructions: [{ code: "gauge-again", params: {}, cautions: ["prove-from-slow"] }],
      },
    ],
    blockedBy: [
      {
        kind: "limit",
        limit: "inertia-coast",
        of: "back",
        state: "laden",
        driveline: "rear",
        valueRadS2: 600,
        limitRadS2: 500,
        margin: -0.2,
      },
      { kind: "hard", code: "correction.slip-bottoms", path: "drivelines[0]", params: { slipTravelMm: -31 }, changes: [wedges] },
    ],
    nearest: { changes: [wedges], probabilityWithin: 0.5, probabilityOfLimits: 0.75, labour: 1.5, margin: 0.25 },
    // JSON has no infinity: a choice that a hard limit forbids has no margin.
    doingNothing: { changes: [], probabilityWithin: 0.5, probabilityOfLimits: 0.75, labour: 1.5, margin: null, tightest: null },
    bestSingleChange: null,
    bestWithoutAxle: { changes: [drops], probabilityWithin: 0.5, probabilityOfLimits: 0.75, labour: 1.5, margin: 0.25 },
    optima: [
      { adjuster: "wedge", amount: 1.25, unit: "deg", margin: 0.1 },
      { adjuster: "bearing-drop", amount: -4.5, unit: "mm", margin: 0.2 },
    ],
    missing: [{ of: "slip", path: "drivelines[0]", effectDeg: null }],
    notUsed: result.notUsed,
    leftOut: result.leftOut,
    learnedFrom: [],
  };
  // As text, because the order of keys is part of what is printed.
  expect(JSON.stringify(json, null, 2)).toBe(JSON.stringify(expected, null, 2));
});
