import { expect, test } from "vitest";
import { angleBetween, vec3 } from "../../geometry/index.js";
import * as c from "../correction-cases.test-support.js";
import { correctionModel } from "../geometry/correction-model.js";
import { drawRecords } from "../geometry/draw-records.js";
import { newPlacement, placeShafts } from "../geometry/place-shafts.js";
import { newMoves, writeMoves } from "../geometry/write-moves.js";
import type { Change, CorrectionInput, Outcome } from "../model/index.js";
import { measuredCase, standing } from "../simulated-vehicle.test-support.js";
import { type Prediction, predict } from "./predict.js";

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.reasons));
  return outcome.value;
};
const codes = (outcome: Outcome<unknown>): readonly string[] => (outcome.ok ? [] : outcome.reasons.map(({ code }) => code));
const joint = (prediction: Prediction, k: number, s = 0) => {
  const estimate = prediction.states[s]?.drivelines[0]?.joints[k]?.operatingAngle;
  if (!estimate) throw new Error("no angle");
  return estimate;
};

const adjusters = [
  c.wedge("wedge", c.rangeDeg(-4, 4, 0.5)),
  c.supportDrop("drop", c.rangeMm(0, 30, 3), { fittedMm: 6 }),
  c.mountSpacer("mount", c.rangeMm(0, 15, 3)),
];
const base = (over: Partial<CorrectionInput> = {}): CorrectionInput => c.correctionCase([c.twoPiece()], adjusters, over);
const wedge2: readonly Change[] = [
  { adjusterId: "wedge", amount: c.deg(2) },
  { adjusterId: "drop", amount: 0.006 },
];

/** The share of draws on which two ways of drawing may differ: both are samples of 4000. */
const SAMPLING = 0.06;
/** Best values by two roads differ by rounding. */
const ROUNDING = 1e-12;

test("the linear error law gives the intervals that drawing the geometry itself gives", () => {
  const input = base({ draws: 4000, states: [c.state("laden", { axleTravel: c.mm(-40), pinionPitch: c.deg(0.6) })] });
  const prediction = value(predict(input, wedge2));
  const model = correctionModel(input);
  const drawn = drawRecords(model, 4000, 99);
  const moves = newMoves(model);
  writeMoves(model, [c.deg(2), 0.006, 0], moves);
  const { topology } = model.drivelines[0] as (typeof model.drivelines)[number];
  const out = newPlacement(topology.joints);
  const angles = [0, 1, 2].map(() => new Float64Array(4001));
  const slips = new Float64Array(4001);
  for (let row = 0; row <= 4000; row++) {
    placeShafts(topology, drawn.records[0] as Float64Array, row * topology.layout.stride, moves[0]?.[0] as Float64Array, 0, out);
    const at = (k: number) =>
      vec3(out.directions[3 * k] as number, out.directions[3 * k + 1] as number, out.directions[3 * k + 2] as number);
    angles.forEach((column, k) => {
      column[row] = angleBetween(at(k), at(k + 1));
    });
    slips[row] = out.slip[0] as number;
  }
  const u = (column: Float64Array): number => {
    const draws = column.subarray(1);
    const mean = draws.reduce((sum, x) => sum + x, 0) / draws.length;
    return Math.sqrt(draws.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (draws.length - 1));
  };
  angles.forEach((column, k) => {
    expect(Math.abs(joint(prediction, k).value - (column[0] as number))).toBeLessThan(ROUNDING);
    expect(Math.abs(joint(prediction, k).u / u(column) - 1)).toBeLessThan(SAMPLING);
  });
  const slip = prediction.states[0]?.drivelines[0]?.slipTravel;
  expect(Math.abs((slip?.value ?? 0) - (slips[0] as number))).toBeLessThan(ROUNDING);
  expect(Math.abs((slip?.u ?? 0) / u(slips) - 1)).toBeLessThan(SAMPLING);
});

test("predicted intervals hold the truth about nineteen times in twenty", () => {
  const truth = c.correctionCase([c.twoPiece([4, 3, 4.8, 1.2])], adjusters);
  const after = standing(truth, [c.deg(2), 0.006, 0.006]).directions;
  const at = (k: number) => vec3(after[3 * k] as number, after[3 * k + 1] as number, after[3 * k + 2] as number);
  const changes = [...wedge2, { adjusterId: "mount", amount: 0.006 }];
  const runs = 250;
  let held = 0;
  for (let seed = 0; seed < runs; seed++) {
    const prediction = value(predict({ ...measuredCase(truth, seed), draws: 600, seed }, changes));
    for (let k = 0; k < 3; k++) {
      const { low, high } = joint(prediction, k);
      const angle = angleBetween(at(k), at(k + 1));
      if (low <= angle && angle <= high) held++;
    }
  }
  // 750 intervals, three of each run hanging together: 95 % within three standard deviations of 250 independent ones is 91 to 99 %.
  expect(held / (3 * runs)).toBeGreaterThan(0.92);
  expect(held / (3 * runs)).toBeLessThan(0.985);
}, 60_000);

test("putting something in and taking it out again leaves the vehicle as it was", () => {
  const before = value(predict(base(), []));
  const back = value(predict(base(), [...wedge2, { adjusterId: "wedge", amount: -c.deg(2) }, { adjusterId: "drop", amount: -0.006 }]));
  expect(back.states).toEqual(before.states);
  expect(value(predict(base(), wedge2)).states).not.toEqual(before.states);
});

test("the same seed gives the same bytes", () => {
  expect(JSON.stringify(predict(base(), wedge2))).toBe(JSON.stringify(predict(base(), wedge2)));
});

test("a prediction refuses what cannot be known or fitted, each with its own reason", () => {
  const change = (adjusterId: string, amount: number) => [{ adjusterId, amount }];
  expect(codes(predict(base(), change("shim", 1)))).toEqual(["correction.unknown-adjuster"]);
  expect(codes(predict(base(), change("drop", -0.01)))).toEqual(["correction.removal-exceeds-fitted"]);
  expect(codes(predict(base(), change("drop", -0.006)))).toEqual([]);
  expect(codes(predict(base(), change("mount", -0.003)))).toEqual(["correction.removal-exceeds-fitted"]);
  expect(codes(predict(base(), change("mount", 3)))).toEqual(["correction.spacer-out-of-reach"]);
  // A pivot 3 m above a shaft of 300 mm: 130 mm at the mount push its first joint past the pinion.
  const short = c.chain([300], [0]);
  const pushed = c.correctionCase([c.drivelineCase(short, c.poseModel(short, [1, 1, 1]))], adjusters.slice(2), {
    powertrain: { ...c.powertrain, pivotUp: c.mm(3000), mountUp: c.mm(2900) },
  });
  expect(codes(predict(pushed, change("mount", 0.13)))).toEqual(["correction.shaft-out-of-reach"]);
  expect(codes(predict(base(), change("wedge", Number.NaN)))).toEqual(["correction.amount-not-finite"]);
  expect(codes(predict(base({ powertrain: null }), change("mount", 0.003)))).toEqual(["correction.powertrain-not-measured"]);
  expect(codes(predict({ ...base(), drivelines: [{ ...c.twoPiece(), refused: true }] }, []))).toEqual(["correction.stop-finding"]);
  const steered = c.twoPiece(undefined, { axle: c.axle({ steered: true }) });
  expect(codes(predict(c.correctionCase([steered], adjusters), change("wedge", c.deg(1))))).toEqual(["correction.caster-not-given"]);
  const blind = { ...c.twoPiece() };
  const poses = { ...blind.poses, inclination: blind.poses.inclination.map((each, s) => (s === 1 ? null : each)) };
  expect(codes(predict(c.correctionCase([{ ...blind, poses }], adjusters), []))).toEqual(["correction.shaft-not-gauged"]);
});

test("slip travel past its ends is a hard limit, told with the state it happens in", () => {
  const states = [c.state("normal"), c.state("rebound", { axleTravel: c.mm(220), pinionPitch: c.deg(0) })];
  const { blocked, states: predicted } = value(predict(base({ states }), []));
  expect(blocked.map(({ code, params }) => [code, params.state])).toEqual([["correction.slip-below-minimum", "rebound"]]);
  expect(predicted.map(({ drivelines }) => drivelines[0]?.slipVerdict)).toEqual(["within", "over"]);
});

test("without lengths only turned parts turn, and the largest gap is named first", () => {
  const driveline = c.chain([undefined], [0]);
  const bare = c.drivelineCase(driveline, c.poseModel(driveline, [2, 3, 4]), {
    axle: c.axle({ centreToJoint: null, springPosition: null }),
  });
  const prediction = value(
    predict(c.correctionCase([bare], [c.wedge("wedge", c.rangeDeg(-4, 4, 1))]), [{ adjusterId: "wedge", amount: c.deg(2) }]),
  );
  const [on] = prediction.states[0]?.drivelines ?? [];
  expect(on?.geometry).toBe("angles-only");
  expect(on?.slipTravel).toBeNull();
  expect(Math.abs(joint(prediction, 1).value - c.deg(3))).toBeLessThan(ROUNDING);
  expect(prediction.missing.map(({ of }) => of)).toEqual(["centre-to-joint", "length:s1", "spring-position", "slip"]);
  // 330 mm of arm turned 2 degrees lift the joint by 11 mm: on a shaft of a metre more than half a degree hangs on that length.
  expect(prediction.missing[0]?.effect).toBeGreaterThan(c.deg(0.15));
});

test("a missing length is worth as much as the prediction loses by it: what a moved joint would have turned the shaft", () => {
  const driveline = c.chain([undefined], [0]);
  const bare = c.drivelineCase(driveline, c.poseModel(driveline, [1, 5, 1]));
  const states = [c.state("laden", { axleTravel: c.mm(-40), pinionPitch: c.deg(0) })];
  const [length] = value(predict(c.correctionCase([bare], [], { states }), [])).missing;
  // 40 mm over the 1.1 m that is usual, which a prediction without the length leaves out.
  const lost = Math.asin(0.04 / 1.1);
  expect(length?.of).toBe("length:s1");
  expect(length?.effect).toBeGreaterThan(0.98 * lost);
});

test("the tape shares in the uncertainty of what a turned axle does, and not where nothing moves", () => {
  const share = (changes: readonly Change[]): number => {
    const sensitivity = value(predict(base(), changes)).states[0]?.drivelines[0]?.sensitivity ?? [];
    expect(sensitivity.length).toBeGreaterThan(0);
    return sensitivity
      .filter(({ of }) => of === "centre-to-joint" || of.startsWith("length:"))
      .reduce((sum, { share: part }) => sum + part, 0);
  };
  expect(share([])).toBeLessThan(1e-12);
  expect(share([{ adjusterId: "wedge", amount: c.deg(4) }])).toBeGreaterThan(1e-5);
});
