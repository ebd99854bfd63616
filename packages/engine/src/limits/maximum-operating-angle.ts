import type { Joint } from "../kinematics/driveline.js";
import { equivalentAngle, peakAccelerationCoefficient } from "../kinematics/index.js";
import type { Radians, RadiansPerSecond } from "../units/index.js";
import type { LimitSet } from "./limits.js";

/** Halvings of [0, 1]: the unevenness to 1e-18, which is the angle to a part in a billion down to a hundredth of a degree. */
const ROUNDS = 60;

/** The operating angle of a single cross joint whose exact peak acceleration (rad/s2, > 0) at `speed` (rad/s, > 0) is `acceleration`, radians in (0, pi/2]. */
export function angleOfAcceleration(acceleration: number, speed: RadiansPerSecond): Radians {
  const wanted = acceleration / speed ** 2;
  let low = 0;
  let high = 1;
  for (let round = 0; round < ROUNDS; round++) {
    const middle = (low + high) / 2;
    if (peakAccelerationCoefficient(middle) < wanted) low = middle;
    else high = middle;
  }
  return equivalentAngle((low + high) / 2);
}

/**
 * Largest operating angle of a joint at the highest shaft speed (rad/s, > 0).
 * A cross joint is bounded by its acceleration and its kind; the others by their kind or the angle their maker states.
 */
export function maximumOperatingAngle(joint: Joint, speed: RadiansPerSecond, limits: LimitSet): Radians {
  const byKind = joint.statedAngle ?? limits.jointAngle[joint.kind].value;
  if (joint.kind !== "cross") return byKind;
  return Math.min(byKind, angleOfAcceleration(limits.jointAcceleration.value, speed)) as Radians;
}
