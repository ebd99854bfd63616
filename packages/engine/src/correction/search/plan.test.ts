import { expect, test } from "vitest";
import { type Radians, radiansToDegrees } from "../../units/index.js";
import * as c from "../correction-cases.test-support.js";
import type { Adjuster, CorrectionDriveline, CorrectionInput, Outcome } from "../model/index.js";
import { predict } from "../predict/predict.js";
import { plan, planSteps } from "./plan.js";
import type { PlanOptions, PlanResult } from "./plan-result.js";

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.reasons));
  return outcome.value;
};
const planned = (input: CorrectionInput, options: PlanOptions = {}): Outcome<PlanResult> => {
  const steps = planSteps(input, { detailDraws: 400, ...options });
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
};
const named = (changes: readonly { readonly adjusterId: string; readonly amount: number }[]) => changes.map(({ adjusterId }) => adjusterId);

/** One-piece shaft, pinion 3 degrees too low: 5 against 2 degrees at its two joints. */
const drooped = (over: Partial<CorrectionDriveline> = {}): CorrectionDriveline => {
  const driveline = c.chain([1300], [0]);
  return c.drivelineCase(driveline, c.poseModel(driveline, [0.5, 5.5, 1]), {
    slips: [{ sectionId: "s1", engaged: c.mm(70), minimumEngaged: c.mm(45), inwardTravel: c.mm(30) }],
    ...over,
  });
};
const stock: readonly Adjuster[] = [c.wedge("wedge", c.rangeDeg(-4, 4, 1)), c.mountSpacer("mount", c.rangeMm(0, 12, 3))];

test("a plan cures what nothing done leaves over its limit, and its prediction is the prediction's own", () => {
  const input = c.correctionCase([drooped({ maxShaftSpeed: null })], stock);
  const driveline = c.chain([1300], [0]);
  const bad = { ...input, drivelines: [{ ...drooped(), poses: c.poseModel(driveline, [1, 5, -1.5]) }] };
  const result = value(planned(bad));
  expect(result.doingNothing.probabilityWithin).toBe(0);
  expect(result.plans[0]?.probabilityWithin).toBeGreaterThan(0.9);
  expect(result.blockedBy).toEqual([]);
  expect(result.nearest).toBeNull();
  const [first] = result.plans;
  const again = value(predict({ ...bad, draws: 400 }, first?.changes ?? []));
  expect(first?.states).toEqual(again.states);
  expect(result.examined).toBe(1 + 8 + 4 + 8 * 4);
});

test("a vehicle that stands well needs nothing, and nothing ranks before any change", () => {
  const driveline = c.chain([1300], [0]);
  const good = c.drivelineCase(driveline, c.poseModel(driveline, [1, 3, 1]), { slips: drooped().slips });
  const result = value(planned(c.correctionCase([good], stock)));
  expect(result.plans[0]?.changes).toEqual([]);
  expect(result.plans[0]?.instructions.map(({ code }) => code)).toEqual(["do-nothing"]);
  expect(result.plans[0]?.probabilityWithin).toBe(1);
});

test("a kept adjuster is not used, by id or by kind", () => {
  const input = c.correctionCase([c.twoPiece([2, 6, 1, 4])], [...stock, c.supportDrop("drop", c.rangeMm(0, 21, 3))]);
  for (const keep of [["wedge"], ["axle-wedge"]]) {
    const { plans, bestWithoutAxle } = value(planned(input, { keep, count: 10 }));
    expect(plans.some(({ changes }) => named(changes).includes("wedge"))).toBe(false);
    expect(bestWithoutAxle?.changes.length).toBeGreaterThan(0);
  }
});

test("what no stock can cure is told with the nearest try and the limits in its way", () => {
  const result = value(
    planned(c.correctionCase([drooped()], [c.wedge("wedge", c.rangeDeg(-1, 1, 1))], { drivelines: [c.twoPiece([0, 8, 1, 9])] })),
  );
  expect(result.nearest?.margin).toBeLessThan(0);
  expect(result.blockedBy.length).toBeGreaterThan(0);
  const [block] = result.blockedBy;
  expect(block?.kind === "limit" && block.use.margin).toBe(result.nearest?.margin);
});

test("a slip that bottoms rules a candidate out and is named as what blocks it", () => {
  const driveline = c.chain([1300], [0]);
  const tight = (inwardTravel: number) =>
    c.drivelineCase(driveline, c.poseModel(driveline, [1, 5, -1.5]), {
      slips: [{ sectionId: "s1", engaged: c.mm(70), minimumEngaged: c.mm(69.9), inwardTravel: c.mm(inwardTravel) }],
    });
  const free = value(planned(c.correctionCase([tight(30)], [c.wedge("wedge", c.rangeDeg(1, 4, 1))])));
  const held = value(planned(c.correctionCase([tight(0.01)], [c.wedge("wedge", c.rangeDeg(1, 4, 1))])));
  expect(free.plans[0]?.changes.length).toBe(1);
  expect(held.plans.map(({ changes }) => changes)).toEqual([[]]);
  const hard = held.blockedBy.find(({ kind }) => kind === "hard");
  expect(hard?.kind === "hard" && hard.reason.code).toBe("correction.slip-bottoms");
});

test("where nothing may be fitted and nothing left as it is, the reason stands there", () => {
  const driveline = c.chain([1300], [0]);
  const pulledOut = c.drivelineCase(driveline, c.poseModel(driveline, [1, 8, -5]), {
    slips: [{ sectionId: "s1", engaged: c.mm(40), minimumEngaged: c.mm(45), inwardTravel: c.mm(30) }],
  });
  const result = value(planned(c.correctionCase([pulledOut], [c.wedge("wedge", c.rangeDeg(-1, 1, 1))])));
  expect(result.plans).toEqual([]);
  expect(result.nearest).toBeNull();
  expect(result.blockedBy.map((block) => block.kind === "hard" && [block.reason.code, block.changes])).toEqual([
    ["correction.slip-below-minimum", []],
  ]);
});

test("a rear section too short to reach the axle in a state is a contradiction, not a plan", () => {
  const driveline = c.chain([1180, 30], [90, 0]);
  const on = c.twoPiece([2, 6, 1, 4], {
    driveline,
    poses: c.poseModel(driveline, [2, 6, 1, 4]),
    slips: [{ sectionId: "s1", engaged: c.mm(70), minimumEngaged: c.mm(45), inwardTravel: c.mm(30) }],
  });
  const states = [c.state("laden", { axleTravel: c.mm(-60), pinionPitch: c.deg(0) })];
  const refused = planned(c.correctionCase([on], [c.wedge("wedge", c.rangeDeg(-1, 1, 1))], { states }));
  expect(refused.ok ? [] : refused.reasons.map(({ code, params }) => [code, params.state])).toEqual([
    ["correction.shaft-out-of-reach", "laden"],
  ]);
});

test("an unmeasured slip leaves the probability open and is asked for before anything is fitted", () => {
  const driveline = c.chain([1300], [0]);
  const unknown = c.drivelineCase(driveline, c.poseModel(driveline, [1, 5, -1.5]));
  const [first] = value(planned(c.correctionCase([unknown], stock))).plans;
  expect(first?.changes.length).toBeGreaterThan(0);
  expect(first?.probabilityWithin).toBeNull();
  expect(first?.probabilityOfLimits).toBeGreaterThan(0.5);
  expect(first?.instructions[0]?.code).toBe("measure-slip-before-fitting");
});

test("a phasing that nobody measured, a stop finding and too much stock are refused", () => {
  const on = c.twoPiece();
  const guessed = {
    ...on,
    driveline: { ...on.driveline, sections: on.driveline.sections.map((section) => ({ ...section, phasingMeasured: false })) },
  };
  const codes = (outcome: Outcome<unknown>) => (outcome.ok ? [] : outcome.reasons.map(({ code }) => code));
  expect(codes(planned(c.correctionCase([guessed], stock)))).toEqual([
    "correction.phasing-not-measured",
    "correction.phasing-not-measured",
  ]);
  expect(codes(planned(c.correctionCase([{ ...on, refused: true }], stock)))).toEqual(["correction.stop-finding"]);
  const huge = [c.wedge("a", c.rangeDeg(-5, 5, 0.005)), c.wedge("b", c.rangeDeg(-5, 5, 0.005))];
  expect(codes(planned(c.correctionCase([on], huge)))).toEqual(["correction.too-many-combinations"]);
});

test("a driveline under a stop finding is left out with all that moves it, and the other is planned", () => {
  const front = c.chain([840], [0], "front");
  const stopped = c.drivelineCase(front, c.poseModel(front, [0, 3, 1]), { runs: "forward", path: "drivelines[1]", refused: true });
  const adjusters = [
    ...stock,
    c.supportDrop("drop", c.rangeMm(0, 21, 3)),
    c.wedge("front-wedge", c.rangeDeg(1, 2, 1), { driveline: "front" }),
  ];
  const both = c.correctionCase([c.twoPiece([2, 6, 1, 4]), stopped], adjusters);
  const result = value(planned(both, { count: 50 }));
  expect(result.leftOut.map(({ code, params }) => [code, params.driveline])).toEqual([["correction.stop-finding", "front"]]);
  expect(result.notUsed.map(({ code, params }) => [code, params.adjuster, params.driveline])).toEqual([
    ["correction.moves-refused-driveline", "mount", "front"],
    ["correction.moves-refused-driveline", "front-wedge", "front"],
  ]);
  const alone = value(
    planned(c.correctionCase([c.twoPiece([2, 6, 1, 4])], [...stock, c.supportDrop("drop", c.rangeMm(0, 21, 3))], {}), {
      keep: ["mount"],
      count: 50,
    }),
  );
  expect(result.plans).toEqual(alone.plans);
  const moved = predict(both, [{ adjusterId: "mount", amount: 0.003 }]);
  expect(moved.ok ? [] : moved.reasons.map(({ code }) => code)).toEqual(["correction.moves-refused-driveline"]);
  expect(
    value(predict(both, [{ adjusterId: "wedge", amount: c.deg(1) }])).states[0]?.drivelines.map(({ drivelineId }) => drivelineId),
  ).toEqual(["rear"]);
  const nothingLeft = planned(c.correctionCase([c.twoPiece(), stopped], [c.mountSpacer("mount", c.rangeMm(0, 12, 3))]));
  expect(nothingLeft.ok ? [] : nothingLeft.reasons.map(({ code }) => code)).toEqual(["correction.stop-finding"]);
});

test("where no choice keeps every limit in any draw, what comes nearest ranks first, however cheap the others are", () => {
  const driveline = c.chain([1300], [0]);
  const bad = c.drivelineCase(driveline, c.poseModel(driveline, [1, 8, -5]), { slips: drooped().slips });
  const adjusters = [c.wedge("wedge", c.rangeDeg(-1, 1, 1), { labour: 5 }), c.mountSpacer("mount", c.rangeMm(0, 6, 3), { labour: 0.1 })];
  const result = value(planned(c.correctionCase([bad], adjusters), { count: 9 }));
  expect(new Set(result.plans.map(({ probabilityOfLimits }) => probabilityOfLimits))).toEqual(new Set([0]));
  expect(result.plans[0]?.changes).toEqual(result.nearest?.changes);
  const singles = result.plans.filter(({ changes }) => changes.length === 1);
  expect(result.bestSingleChange?.margin).toBe(Math.max(...singles.map(({ margin }) => margin)));
  expect(named(result.bestSingleChange?.changes ?? [])).toEqual(["wedge"]);
});

test("no single change is named where none betters doing nothing", () => {
  const driveline = c.chain([1300], [0]);
  const good = c.drivelineCase(driveline, c.poseModel(driveline, [1, 3, 1]), { slips: drooped().slips });
  const result = value(planned(c.correctionCase([good], [c.wedge("wedge", c.rangeDeg(4, 4, 1))])));
  expect(result.doingNothing.probabilityWithin).toBe(1);
  expect(result.bestSingleChange).toBeNull();
});

test("a steered axle is offered no wedge without its caster, and none that leaves the caster's limits", () => {
  const driveline = c.chain([900], [0], "front");
  const steered = (caster: NonNullable<CorrectionDriveline["axle"]>["caster"]) =>
    c.drivelineCase(driveline, c.poseModel(driveline, [1, 5, -1.5]), {
      runs: "forward",
      slips: drooped().slips,
      axle: c.axle({ steered: true, caster }),
    });
  const wedges = [c.wedge("wedge", c.rangeDeg(-4, 4, 1), { driveline: "front" })];
  const without = value(planned(c.correctionCase([steered(null)], wedges)));
  expect(without.notUsed.map(({ code }) => code)).toEqual(["correction.caster-not-given"]);
  expect(without.examined).toBe(1);
  const caster = { value: c.deg(4), minimum: c.deg(2.5), maximum: c.deg(5.5) };
  const { plans } = value(planned(c.correctionCase([steered(caster)], wedges), { count: 20 }));
  const amounts = plans.flatMap(({ changes }) => changes.map(({ amount }) => Math.round(radiansToDegrees(amount as Radians))));
  expect([...amounts].sort()).toEqual([-1, 1]);
  const up = plans.find(({ changes }) => (changes[0]?.amount ?? 0) > 0);
  const change = up?.instructions.find(({ code }) => code === "caster-changes");
  expect([change?.params.beforeDeg, change?.params.afterDeg].map((angle) => Math.round(Number(angle) * 1e6) / 1e6)).toEqual([4, 3]);
});

test("a free cut of one adjuster leaves at least as much of the limit as any size in stock", () => {
  const input = c.correctionCase([c.twoPiece([2, 6, 1, 4])], [...stock, c.supportDrop("drop", c.rangeMm(0, 21, 3))]);
  const { optima, plans } = value(planned(input, { maxChanges: 1, count: 50 }));
  expect(optima.map(({ adjusterId }) => adjusterId)).toEqual(["wedge", "mount", "drop"]);
  for (const { adjusterId, margin } of optima) {
    const stocked = plans.filter(({ changes }) => changes[0]?.adjusterId === adjusterId).map((each) => each.margin);
    expect(margin).toBeGreaterThanOrEqual(Math.max(...stocked));
  }
});

test("a change that cures one state and breaks another says so", () => {
  const driveline = c.chain([1300], [0]);
  const windUp = { drive: c.deg(5), coast: c.deg(2.5) };
  const on = c.drivelineCase(driveline, c.poseModel(driveline, [1, 3, -2.2], { uDeg: 0.01 }), {
    slips: drooped().slips,
    axle: c.axle({ windUp }),
  });
  const states = [c.state("normal"), c.state("pull", { load: "drive-torque" })];
  const result = value(planned(c.correctionCase([on], [c.wedge("wedge", c.rangeDeg(3, 3, 1))], { states }), { count: 5 }));
  const wedged = result.plans.find(({ changes }) => changes.length === 1);
  const trade = wedged?.instructions.find(({ code }) => code === "trade-off");
  expect(trade?.params.state).toBe("pull");
  expect(trade?.params.curedStates).toEqual(["normal"]);
});

test("the search stops at the next piece of work once told, with the caller's own reason, and shows how far it is", async () => {
  const big = [
    c.wedge("wedge", c.rangeDeg(-5, 5, 0.05)),
    c.supportDrop("drop", c.rangeMm(0, 100, 0.2)),
    c.mountSpacer("mount", c.rangeMm(0, 25, 0.5)),
  ];
  const shares: number[] = [];
  let pieces = 0;
  const signal = {
    throwIfAborted: () => {
      if (pieces === 4) throw new Error("stopped by hand");
    },
  };
  const pause = async () => {
    pieces++;
  };
  const work = { signal, onProgress: (share: number) => void shares.push(share), pause };
  await expect(plan(c.correctionCase([c.twoPiece([2, 6, 1, 4])], big), {}, work)).rejects.toThrow("stopped by hand");
  expect(shares.length).toBe(4);
  expect(shares.every((share, k) => share >= 0 && share <= 1 && share >= (shares[k - 1] ?? 0))).toBe(true);
});
