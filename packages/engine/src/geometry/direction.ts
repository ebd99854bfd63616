import type { Radians } from "../units/index.js";
import { cross, dot, length, type Vec3, vec3 } from "./vec3.js";

/**
 * How one shaft lies in the chain frame.
 * inclination > 0: the driven end is lower. heading > 0: the driven end lies toward chain +Y. Both in (-pi/2, pi/2).
 */
export interface ShaftPose {
  readonly inclination: Radians;
  readonly heading: Radians;
}

/** Unit vector along a shaft, from its source end to its driven end: (cos i cos h, cos i sin h, -sin i). */
export function directionOf({ inclination, heading }: ShaftPose): Vec3 {
  const cosInclination = Math.cos(inclination);
  return vec3(cosInclination * Math.cos(heading), cosInclination * Math.sin(heading), -Math.sin(inclination));
}

/** The pose of a direction; the inverse of `directionOf` up to the vector's length. */
export function poseOf(direction: Vec3): ShaftPose {
  return {
    inclination: Math.atan2(-direction.z, Math.hypot(direction.x, direction.y)) as Radians,
    heading: Math.atan2(direction.y, direction.x) as Radians,
  };
}

/**
 * Angle between two directions, in [0, pi].
 * By atan2 of |a x b| and a . b, which stays exact for nearly parallel shafts where acos of the dot product loses half its digits.
 */
export function angleBetween(a: Vec3, b: Vec3): Radians {
  return Math.atan2(length(cross(a, b)), dot(a, b)) as Radians;
}
