import { describe, expect, test } from "vitest";
import type { ShaftPose } from "../geometry/index.js";
import { degreesToRadians, radiansToDegrees } from "../units/index.js";
import { benchSigns, benchSum, nearlyPlanar, outOfPlane } from "./bench-rule.js";
import type { Driveline, JointKind } from "./driveline.js";

/** Degrees and back by way of an eigenvector: a millionth of a degree is rounding. */
const ROUNDING_DEG = 1e-6;

const driveline = (phasingsDeg: readonly (number | null)[], kinds?: readonly JointKind[]): Driveline => ({
  id: "rear",
  joints: [...phasingsDeg, 0].map((_, k) => ({ id: `J${k + 1}`, kind: kinds?.[k] ?? "cross" })),
  sections: phasingsDeg.map((deg, k) => ({
    id: `s${k + 1}`,
    phasing: deg === null ? null : degreesToRadians(deg),
    phasingMeasured: true,
  })),
});

const pose = (inclinationDeg: number, headingDeg = 0): ShaftPose => ({
  inclination: degreesToRadians(inclinationDeg),
  heading: degreesToRadians(headingDeg),
});

describe("the bench rule", () => {
  test("changes sign from joint to joint where yokes are in line and keeps it across a quarter turn, modulo a half turn", () => {
    expect(benchSigns(driveline([]))).toEqual([1]);
    expect(benchSigns(driveline([0, 0]))).toEqual([1, -1, 1]);
    expect(benchSigns(driveline([90, 0]))).toEqual([1, 1, -1]);
    expect(benchSigns(driveline([-90, 180, -180]))).toEqual([1, 1, -1, 1]);
  });

  test("adds 3, 5 and 4 degrees in line to 2, and 1, 5 and 4 to nothing", () => {
    const signs = benchSigns(driveline([0, 0])) ?? [];
    expect(benchSum(signs, [3, 5, 4])).toBe(2);
    expect(benchSum(signs, [1, 5, 4])).toBe(0);
  });

  test("says nothing of another kind of joint, an unknown phasing, or one further than half a degree from in line or a quarter turn", () => {
    for (const kind of ["ball", "flexible", "double-cross"] as const) expect(benchSigns(driveline([0], ["cross", kind]))).toBeNull();
    expect(benchSigns(driveline([null]))).toBeNull();
    for (const near of [0.5, -0.5, 89.5, 90.5, 179.5]) expect(benchSigns(driveline([near]))).not.toBeNull();
    for (const far of [0.51, -0.51, 45, 89.49, 90.51, -179.4]) expect(benchSigns(driveline([far]))).toBeNull();
  });

  test("measures how far shafts lie out of one plane, whichever way that plane stands", () => {
    expect(radiansToDegrees(outOfPlane([pose(1), pose(5), pose(-3), pose(0)]))).toBeLessThan(ROUNDING_DEG);
    expect(radiansToDegrees(outOfPlane([pose(0, 1), pose(0, 5), pose(0, -3)]))).toBeLessThan(ROUNDING_DEG);
    // Two shafts always share a plane, and shafts in line share many.
    expect(radiansToDegrees(outOfPlane([pose(3, 2), pose(-4, 7)]))).toBeLessThan(ROUNDING_DEG);
    expect(radiansToDegrees(outOfPlane([pose(2, 2), pose(2, 2), pose(2, 2)]))).toBeLessThan(ROUNDING_DEG);
    // Mirror twins a degree to each side of a plane that many steep shafts hold upright.
    const steep = [pose(40), pose(-40), pose(40), pose(-40)];
    const aside = outOfPlane([...steep, pose(0, 1), pose(0, -1)]);
    expect(Math.abs(radiansToDegrees(aside) - 1)).toBeLessThan(ROUNDING_DEG);
    expect(nearlyPlanar([...steep, pose(0, 1), pose(0, -1)])).toBe(false);
    expect(nearlyPlanar([...steep, pose(0, 0.49), pose(0, -0.49)])).toBe(true);
  });

  test("takes directions whose components are next to nothing", () => {
    expect(nearlyPlanar([pose(0), pose(0.1), pose(8.7e-79), pose(-2e-230, 1.29e-306), pose(0), pose(0)])).toBe(true);
  });
});
