import type { ShaftPose } from "@halfturn/engine/geometry";
import { chainState, type Driveline, equivalentAngle, unevennessOf, wholeChain } from "@halfturn/engine/kinematics";
import { degreesToRadians, radiansToDegrees } from "@halfturn/engine/units";

/** A pose from degrees: inclination (driven end lower is positive) and heading. */
export const pose = (inclinationDeg: number, headingDeg = 0): ShaftPose => ({
  inclination: degreesToRadians(inclinationDeg),
  heading: degreesToRadians(headingDeg),
});

/** A driveline of cross joints with the given phasings in degrees. */
export const crossJoints = (phasingsDeg: readonly number[]): Driveline => ({
  id: "rear",
  joints: Array.from({ length: phasingsDeg.length + 1 }, (_, k) => ({ id: `J${k + 1}`, kind: "cross" })),
  sections: phasingsDeg.map((phasing, k) => ({ id: `s${k + 1}`, phasing: degreesToRadians(phasing), phasingMeasured: true })),
});

/** Shafts lying in one upright plane whose joints work at the given angles, bent alternately (as a Z). */
export function planarPoses(jointAnglesDeg: readonly number[]): readonly ShaftPose[] {
  const poses = [pose(0)];
  let inclination = 0;
  jointAnglesDeg.forEach((angle, k) => {
    inclination += k % 2 === 0 ? angle : -angle;
    poses.push(pose(inclination));
  });
  return poses;
}

/** Equivalent angle of a whole chain in degrees. */
export const equivalentDeg = (driveline: Driveline, poses: readonly ShaftPose[]): number =>
  radiansToDegrees(equivalentAngle(unevennessOf(wholeChain(chainState(driveline, poses)))));
