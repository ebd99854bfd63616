import { type PredictedDriveline, type Prediction, predict } from "@halfturn/engine/correction";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { degreesToRadians } from "@halfturn/engine/units";
import { expect, test } from "vitest";
import { correctionBasis } from "../correction/correction-basis.js";
import { exampleCase } from "../example-cases.test-support.js";
import { drivelineToJson } from "./analysis-to-json.js";
import { predictionToJson } from "./prediction-to-json.js";

const document = exampleCase("two-piece");
const basis = correctionBasis(document, { defaults: DEFAULT_LIMITS, draws: 100, seed: 7 });

function predicted(): Prediction {
  const outcome = predict(basis.input, [
    { adjusterId: "wedge", amount: degreesToRadians(-1) },
    { adjusterId: "rear-mount", amount: 0.006 },
    { adjusterId: "turn-front", amount: -1 },
  ]);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.reasons));
  return outcome.value;
}
const prediction = predicted();
const first = (states: Prediction["states"]): PredictedDriveline => {
  const driveline = states[0]?.drivelines[0];
  if (!driveline) throw new Error("the example has a driveline");
  return driveline;
};

test("changes stand in the units of the file, each driveline as analyse prints it with its slip beside", () => {
  const json = predictionToJson(prediction, basis);
  expect(JSON.stringify(json.changes)).toBe(
    JSON.stringify([
      { adjuster: "wedge", amount: -1, unit: "deg" },
      { adjuster: "rear-mount", amount: 6, unit: "mm" },
      { adjuster: "turn-front", amount: -1, unit: "step" },
    ]),
  );
  expect([json.format, json.version, json.seed]).toEqual(["halfturn-prediction", 1, 7]);
  const { slipTravelMm, slipVerdict, geometry, ...rest } = json.states[0]?.drivelines[0] ?? {};
  expect(JSON.stringify(rest)).toBe(JSON.stringify(drivelineToJson({ analysis: first(prediction.states), stage: "as-found", gauging: 0 })));
  expect([slipVerdict, geometry]).toEqual(["within", "full"]);
  const slip = first(prediction.states).slipTravel;
  expect(slipTravelMm).toEqual({
    value: (slip?.value ?? 0) * 1000,
    u: (slip?.u ?? 0) * 1000,
    interval95: [(slip?.low ?? 0) * 1000, (slip?.high ?? 0) * 1000],
  });
});

test("what is not known is null, an effect is in degrees, and what was learned or left out is named", () => {
  const unknown: Prediction = {
    ...prediction,
    states: prediction.states.map((state) => ({
      ...state,
      drivelines: state.drivelines.map((one) => ({ ...one, slipTravel: null, slipVerdict: "not-gauged", geometry: "angles-only" })),
    })),
    blocked: [{ code: "correction.slip-bottoms", path: "drivelines[0]", params: { slipTravelMm: -31 } }],
    missing: [
      { of: "centre-to-joint", path: "drivelines[0].axle", effect: degreesToRadians(0.25) },
      { of: "slip:back", path: "drivelines[0]", effect: null },
    ],
    leftOut: [{ code: "correction.stop-finding", path: "drivelines[1]", params: { driveline: "front" } }],
  };
  const learned = { parameters: [], covariance: [], chiSquared: 0, readings: 0 };
  const json = predictionToJson(unknown, { ...basis, taught: { kind: "learned", geometry: learned, from: [2] } });
  expect(json.states.flatMap(({ drivelines }) => drivelines.map(({ slipTravelMm, geometry }) => [slipTravelMm, geometry]))).toEqual(
    prediction.states.map(() => [null, "angles-only"]),
  );
  expect(json.missing).toEqual([
    { of: "centre-to-joint", path: "drivelines[0].axle", effectDeg: 0.25 },
    { of: "slip:back", path: "drivelines[0]", effectDeg: null },
  ]);
  expect(json.blockedBy).toEqual(unknown.blocked);
  expect(json.leftOut).toEqual(unknown.leftOut);
  expect(json.learnedFrom).toEqual([2]);
  expect(predictionToJson(unknown, basis).learnedFrom).toEqual([]);
});
