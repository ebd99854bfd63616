import { readFileSync } from "node:fs";
import { analyseCase, examples, restore } from "@halfturn/casefile";
import { analysePoses } from "@halfturn/engine/analysis";
import { fuseGauging } from "@halfturn/engine/gauging";
import { degreesToRadians } from "@halfturn/engine/units";
import { expect, test } from "vitest";
import { movedDriveline } from "./moved-driveline.js";
import { isMoved, movedPoses, unmoved } from "./moves.js";

const url = examples.find(({ name }) => name === "two-piece")?.url ?? "";
const restored = restore(readFileSync(new URL(url), "utf8"));
if (!restored.ok) throw new Error("the example does not open");
const [analysed] = analyseCase(restored.case, {}, { draws: 500, seed: 1, accepted: [] });
if (!analysed) throw new Error("the example has no driveline");
const { input, analysis } = analysed;
const model = fuseGauging(input.gauging, input.driveline);
const STILL = unmoved(3);
/** A sum of two sines and an arc tangent. */
const ROUNDING = 1e-12;

test("nothing moved is the measured driveline", () => {
  expect(isMoved(STILL)).toBe(false);
  const again = analysePoses(movedDriveline(input, fuseGauging(input.gauging, input.driveline), analysis.withheld, STILL));
  again.joints.forEach(({ operatingAngle }, k) => {
    const was = analysis.joints[k]?.operatingAngle?.value ?? Number.NaN;
    expect(Math.abs((operatingAngle?.value ?? Number.NaN) - was)).toBeLessThan(ROUNDING);
  });
  expect(again.cancellation.equivalentAngle?.value).toBe(analysis.cancellation.equivalentAngle?.value);
});

test("an inner joint moved up levels the section before it and steepens the one behind it, by rise over length", () => {
  const moved = movedPoses(model, input.driveline, { ...STILL, rises: [0, 0.01, 0] });
  const turn = (shaft: number) => (moved.inclination[shaft] ?? 0) - (model.inclination[shaft] ?? 0);
  const i = model.inclination[1] ?? 0;
  expect(Math.abs(Math.tan(i + turn(1)) - (Math.tan(i) - 0.01 / (1.18 * Math.cos(i))))).toBeLessThan(ROUNDING);
  expect(turn(1)).toBeLessThan(0);
  expect(turn(2)).toBeGreaterThan(0);
  expect([turn(0), turn(3)]).toEqual([0, 0]);
});

test("every joint moved alike turns nothing, and a tilt turns the one shaft", () => {
  const lifted = movedPoses(model, input.driveline, { ...STILL, rises: [0.02, 0.02, 0.02] });
  lifted.inclination.forEach((inclination, k) => {
    expect(Math.abs((inclination ?? 0) - (model.inclination[k] ?? 0))).toBeLessThan(ROUNDING);
  });
  const tilt = degreesToRadians(1);
  const tilted = movedPoses(model, input.driveline, { ...STILL, drivenTilt: tilt });
  expect(Math.abs((tilted.inclination[3] ?? 0) - (model.inclination[3] ?? 0) - tilt)).toBeLessThan(ROUNDING);
  expect(tilted.inclination.slice(0, 3)).toEqual(model.inclination.slice(0, 3));
});

test("a shaft that was not gauged stays unknown", () => {
  const blind = { ...model, inclination: model.inclination.map((one, k) => (k === 1 ? null : one)) };
  expect(movedPoses(blind, input.driveline, { ...STILL, rises: [0, 0.01, 0] }).inclination[1]).toBeNull();
});

test("a withheld result stays withheld whatever is moved", () => {
  const withheld = analysePoses(movedDriveline(input, model, true, { ...STILL, rises: [0, 0.01, 0] }));
  expect(withheld.joints.map(({ verdict }) => verdict)).toEqual(["withheld", "withheld", "withheld"]);
});
