import { expect, test } from "vitest";
import type { PoseModel } from "../../gauging/index.js";
import { poseOf, vec3 } from "../../geometry/index.js";
import * as c from "../correction-cases.test-support.js";
import { correctionModel } from "../geometry/correction-model.js";
import type { CorrectionInput, Outcome } from "../model/index.js";
import { predictedPoses } from "../predict/predicted-poses.js";
import { measuredCase, standing } from "../simulated-vehicle.test-support.js";
import { judgePrediction } from "./judge-prediction.js";
import { type BeforeAfter, learnGeometry } from "./learn-geometry.js";

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.reasons));
  return outcome.value;
};

const stock = [c.wedge("wedge", c.rangeDeg(-6, 6, 0.5)), c.supportDrop("drop", c.rangeMm(0, 60, 3))];
/** A fine gauge, so that angles can teach lengths at all, and a coarse tape. */
const truth: CorrectionInput = c.correctionCase(
  [{ ...c.twoPiece([4, 3, 4.5, 1.5]), poses: c.poseModel(c.twoPiece().driveline, [4, 3, 4.5, 1.5], { uDeg: 0.005 }) }],
  stock,
  { accuracy: { tape: c.mm(25), pitch: c.deg(0.1) } },
);
const amounts = [c.deg(5), 0.045];
const changes = [
  { adjusterId: "wedge", amount: c.deg(5) },
  { adjusterId: "drop", amount: 0.045 },
];

const posesOf = (input: CorrectionInput, directions: Float64Array): PoseModel => {
  const { poses } = input.drivelines[0] as (typeof input.drivelines)[number];
  return {
    ...poses,
    inclination: poses.shafts.map(
      (_, s) => poseOf(vec3(directions[3 * s] as number, directions[3 * s + 1] as number, directions[3 * s + 2] as number)).inclination,
    ),
  };
};

/** A correction of the true vehicle, gauged before and after with independent errors. */
function corrected(seed: number): BeforeAfter {
  const before = measuredCase(truth, seed);
  const after = standing(truth, amounts).directions;
  const afterTrue = { ...truth, drivelines: truth.drivelines.map((on) => ({ ...on, poses: posesOf(truth, after) })) };
  const gauged = measuredCase(afterTrue, seed + 100_000).drivelines[0]?.poses as PoseModel;
  return { before, changes, after: { rear: gauged } };
}

test("a correction teaches the axle's arm: closer to the truth than the tape, with an uncertainty that says so", () => {
  const runs = 40;
  let tape = 0;
  let learned = 0;
  let inside = 0;
  for (let seed = 1; seed <= runs; seed++) {
    const pair = corrected(seed);
    const { parameters } = value(learnGeometry([pair]));
    const arm = parameters.find(({ of }) => of === "centre-to-joint");
    const taped = pair.before.drivelines[0]?.axle?.centreToJoint ?? 0;
    const error = taped + (arm?.shift ?? 0) - 0.33;
    tape += (taped - 0.33) ** 2;
    learned += error ** 2;
    if (Math.abs(error) < 2 * (arm?.u ?? 0)) inside++;
    expect(arm?.u).toBeLessThan(0.75 * (arm?.priorU ?? 0));
  }
  expect(learned).toBeLessThan(0.65 * tape);
  expect(inside).toBeGreaterThan(0.85 * runs);
});

test("the next prediction rests on what was learned: nearer the truth and surer", () => {
  let plain = 0;
  let taught = 0;
  for (let seed = 1; seed <= 25; seed++) {
    const pair = corrected(seed);
    const learned = value(learnGeometry([pair]));
    const next = [c.deg(3), 0.015];
    // The same gauge readings in both, and the truth's own poses, so that only the geometry differs.
    const exact = (input: CorrectionInput) => ({
      ...input,
      drivelines: input.drivelines.map((on) => ({ ...on, poses: (truth.drivelines[0] as typeof on).poses })),
    });
    const section = (input: CorrectionInput) => predictedPoses(correctionModel(input), next)[0]?.[0]?.poses;
    const right = section(truth)?.inclination[2] ?? 0;
    const before = section(exact(pair.before));
    const after = section(exact({ ...pair.before, learned }));
    plain += ((before?.inclination[2] ?? 0) - right) ** 2;
    taught += ((after?.inclination[2] ?? 0) - right) ** 2;
    const u = (poses: PoseModel | undefined) =>
      Math.hypot(...(poses?.sources.map(({ u: each }, k) => (poses.inclinationBy[2]?.[k] ?? 0) * each) ?? [0]));
    expect(u(after)).toBeLessThan(u(before));
  }
  expect(taught).toBeLessThan(0.5 * plain);
});

test("nothing gauged after teaches nothing: the tape stands as it was", () => {
  const { parameters, readings } = value(learnGeometry([{ before: truth, changes, after: {} }]));
  expect(readings).toBe(0);
  expect(parameters.every(({ shift, u, priorU }) => shift === 0 && Math.abs(u / priorU - 1) < 1e-12)).toBe(true);
});

test("two corrections teach more than one, and the covariance is symmetric with the stated uncertainties on its diagonal", () => {
  const one = value(learnGeometry([corrected(5)]));
  const first = corrected(5);
  const two = value(learnGeometry([first, { ...corrected(6), before: { ...first.before, drivelines: first.before.drivelines } }]));
  one.parameters.forEach(({ u }, k) => {
    expect(two.parameters[k]?.u).toBeLessThanOrEqual(u * (1 + 1e-9));
  });
  two.covariance.forEach((row, a) => {
    expect(Math.abs((row[a] as number) / (two.parameters[a]?.u ?? 1) ** 2 - 1)).toBeLessThan(1e-9);
    row.forEach((entry, b) => {
      expect(Math.abs(entry - (two.covariance[b]?.[a] as number))).toBeLessThan(1e-15);
    });
  });
});

test("a prediction that came true is confirmed about as often as its uncertainty promises", () => {
  let confirmed = 0;
  for (let seed = 1; seed <= 60; seed++) if (value(judgePrediction(corrected(seed))).verdict === "confirmed") confirmed++;
  // Four shafts, each within 95 %: between 0.95^4 = 81 % and 95 %, less three standard deviations of 60 trials.
  expect(confirmed).toBeGreaterThan(60 * 0.67);
});

test("a wedge fitted the wrong way round is told apart from one that was not fitted", () => {
  const pair = corrected(3);
  const at = (wedge: number): BeforeAfter => {
    const directions = standing(truth, [wedge, 0.045]).directions;
    return { ...pair, after: { rear: posesOf(truth, directions) } };
  };
  const reversed = value(judgePrediction(at(-c.deg(5))));
  expect(reversed.verdict).toBe("differs");
  expect(reversed.lookAt[0]).toBe("thick-end-turned-round");
  expect(value(judgePrediction(at(0))).lookAt[0]).toBe("change-not-taken");
  expect(value(judgePrediction({ ...pair, after: {} })).verdict).toBe("not-gauged");
});
