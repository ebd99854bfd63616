import { expect, test } from "vitest";
import * as c from "../correction-cases.test-support.js";
import type { Adjuster, CorrectionDriveline } from "../model/index.js";
import { adjusterInstructions } from "./adjuster-instructions.js";
import { INSTRUCTION_CODES } from "./instruction.js";
import { tradeOffs } from "./trade-offs.js";
import { thickEnd } from "./wedge-instructions.js";

const driveline = c.chain([1300], [0]);
const on = (over: Partial<CorrectionDriveline> = {}): CorrectionDriveline =>
  c.drivelineCase(driveline, c.poseModel(driveline, [1, 3, 1]), over);
/** Millimetres and degrees from a chain of a few products. */
const ROUNDING = 1e-9;

test("the thick end of a nose-up wedge points away from the pinion under a spring above the axle, toward it over one below", () => {
  const pointing = (runs: "rearward" | "forward", springPosition: "above-axle" | "below-axle" | null, total: number) =>
    thickEnd(on({ runs, axle: c.axle({ springPosition }) }), total);
  expect(pointing("rearward", "above-axle", 0.03)).toBe("rearward");
  expect(pointing("rearward", "below-axle", 0.03)).toBe("forward");
  expect(pointing("forward", "above-axle", 0.03)).toBe("forward");
  expect(pointing("forward", "below-axle", 0.03)).toBe("rearward");
  expect(pointing("rearward", "above-axle", -0.03)).toBe("forward");
  expect(pointing("rearward", null, 0.03)).toBe("unknown");
});

test("a wedge of 3 degrees on a pad of 100 mm is 2 mm thin and 7.2408 mm thick, and its bolts grow by its mean", () => {
  const input = c.correctionCase([on()], [c.wedge("wedge", c.rangeDeg(-4, 4, 1))]);
  const said = adjusterInstructions(input, input.adjusters[0] as Adjuster, c.deg(3));
  expect(said.map(({ code }) => code)).toEqual([
    "fit-wedge",
    "same-on-both-sides",
    "centre-bolt-longer",
    "u-bolts-longer",
    "check-brake-hose",
  ]);
  // 2 + 100 tan 3 = 7.240778; mean 4.620389.
  expect(Math.abs(Number(said[0]?.params.thickMm) - 7.240777928)).toBeLessThan(ROUNDING);
  expect(said[0]?.params.thinMm).toBe(2);
  expect(Math.abs(Number(said[2]?.params.byMm) - 4.620388964)).toBeLessThan(ROUNDING);
  expect(said[0]?.cautions).toContain("brake-and-steering-lines");
});

test("taking a fitted wedge out is said as that, with no longer bolts", () => {
  const input = c.correctionCase([on()], [c.wedge("wedge", c.rangeDeg(-4, 4, 1), { fittedDeg: 2 })]);
  const codes = adjusterInstructions(input, input.adjusters[0] as Adjuster, -c.deg(2)).map(({ code }) => code);
  expect(codes).toEqual(["remove-wedge", "same-on-both-sides", "check-brake-hose"]);
});

test("every kind of change is told, match-marks and balance with a rephasing, longer bolts only where something is added", () => {
  const base = { labour: 1, parts: 0, stock: c.rangeMm(-30, 30, 3), path: "adjusters[0]", drivelineId: "rear" };
  const adjusters: readonly Adjuster[] = [
    c.supportDrop("drop", c.rangeMm(0, 21, 3), { fittedMm: 6 }),
    c.supportShift("shift", c.rangeMm(-9, 9, 3)),
    c.mountSpacer("mount", c.rangeMm(0, 12, 3), { fittedMm: 6 }),
    { kind: "ride-height", id: "lift", ...base, pitchPerMetre: 0.3 },
    { kind: "link-length", id: "link", ...base, link: "lower", pitchPerMetre: 3 },
    { kind: "rephase", id: "clock", ...base, sectionId: "s1", splineTeeth: 16 },
  ];
  const input = c.correctionCase([c.twoPiece()], adjusters);
  const codes = (k: number, amount: number) => adjusterInstructions(input, adjusters[k] as Adjuster, amount).map(({ code }) => code);
  expect(codes(0, 0.006)).toEqual(["fit-support-spacer", "bolts-longer", "check-exhaust-clearance"]);
  expect(codes(0, -0.006)).toEqual(["remove-support-spacer", "check-exhaust-clearance"]);
  expect(codes(2, 0.003)).toEqual(["fit-mount-spacer", "bolts-longer", "check-powertrain-clearance", "check-exhaust-clearance"]);
  expect(codes(2, -0.006)).toEqual(["remove-mount-spacer", "check-powertrain-clearance", "check-exhaust-clearance"]);
  expect(codes(3, 0.02)[0]).toBe("change-ride-height");
  expect(codes(4, 0.004)[0]).toBe("set-link-length");
  expect(codes(5, 2)).toEqual(["match-mark", "rephase-section", "check-balance"]);
  const shift = adjusterInstructions(input, adjusters[1] as Adjuster, -0.006)[0];
  expect([shift?.params.toward, Math.round(Number(shift?.params.byMm))]).toEqual(["right", 6]);
  const turned = adjusterInstructions(input, adjusters[5] as Adjuster, 2)[1];
  // Two steps of sixteen from 90 degrees: 135, which is -45 of a half turn.
  expect([turned?.params.turnDeg, Math.round(Number(turned?.params.afterDeg) * 1e6) / 1e6, turned?.params.direction]).toEqual([
    45,
    -45,
    "clockwise",
  ]);
  const every = adjusters.flatMap((adjuster, k) => adjusterInstructions(input, adjuster, k === 5 ? 1 : 0.003));
  expect(every.every(({ code }) => INSTRUCTION_CODES.includes(code))).toBe(true);
});

test("a trade-off names what breaks and which states are cured", () => {
  const use = (state: string, margin: number) =>
    ({
      limit: "equivalent-angle",
      of: "rear",
      value: c.deg(3 * (1 - margin)),
      bound: c.deg(3),
      margin,
      state,
      drivelineId: "rear",
      slipTravel: 0,
    }) as const;
  const [trade, ...more] = tradeOffs(
    [use("normal", -0.2), use("laden", 0.1), use("pull", -0.5)],
    [use("normal", 0.2), use("laden", -0.1), use("pull", -0.4)],
  );
  expect(more).toEqual([]);
  expect(trade?.params).toMatchObject({ state: "laden", curedStates: ["normal"], limit: "equivalent-angle" });
  expect(Math.abs(Number(trade?.params.valueDeg) - 3.3)).toBeLessThan(ROUNDING);
  expect(tradeOffs([use("normal", 0.1)], [use("normal", -0.1)])).toHaveLength(1);
});
