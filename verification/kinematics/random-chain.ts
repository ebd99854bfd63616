import type { ShaftPose } from "@halfturn/engine/geometry";
import type { Driveline } from "@halfturn/engine/kinematics";
import type { Deviates } from "@halfturn/engine/uncertainty";
import { degreesToRadians } from "@halfturn/engine/units";
import { crossJoints, pose } from "./build-chain.js";
import { cross, type Vector } from "./vectors.js";

/** A chain of cross joints: as the engine takes it, and as directions and phasings in radians. */
export interface RandomChain {
  readonly driveline: Driveline;
  readonly poses: readonly ShaftPose[];
  readonly directions: readonly Vector[];
  readonly phasings: readonly number[];
}

/** Direction of a shaft from degrees of inclination and heading, in the frame X along the power flow, Y = Z x X, Z up. */
export function directionFromDegrees(inclinationDeg: number, headingDeg: number): Vector {
  const [i, h] = [degreesToRadians(inclinationDeg), degreesToRadians(headingDeg)];
  return [Math.cos(i) * Math.cos(h), Math.cos(i) * Math.sin(h), -Math.sin(i)];
}

/** The level direction across a shaft that its angles are counted from. */
export const lateral = (direction: Vector): Vector => {
  const across = cross([0, 0, 1], direction);
  const size = Math.hypot(...across);
  return [across[0] / size, across[1] / size, 0];
};

/** From one shaft to the next: how far it bends, and which way. */
export interface Bend {
  readonly byDeg: number;
  /** 0: the driven end sinks; 90: it swings toward +Y. */
  readonly towardDeg: number;
}

/** A chain that starts level and straight ahead and bends at each joint; the turning away of inclination and heading makes the joint angle only nearly `byDeg`. */
export function bentChain(bends: readonly Bend[], phasingsDeg: readonly number[]): RandomChain {
  let [inclination, heading] = [0, 0];
  const lying: (readonly [number, number])[] = [[0, 0]];
  for (const { byDeg, towardDeg } of bends) {
    inclination += byDeg * Math.cos(degreesToRadians(towardDeg));
    heading += byDeg * Math.sin(degreesToRadians(towardDeg));
    lying.push([inclination, heading]);
  }
  // About the middle of them all, so that a long chain does not curl up.
  const middle = lying.reduce(([i, h], [di, dh]) => [i + di / lying.length, h + dh / lying.length], [0, 0]) as readonly [number, number];
  const centred = lying.map(([i, h]) => [i - middle[0], h - middle[1]] as const);
  return {
    driveline: crossJoints(phasingsDeg),
    poses: centred.map(([i, h]) => pose(i, h)),
    directions: centred.map(([i, h]) => directionFromDegrees(i, h)),
    phasings: phasingsDeg.map(degreesToRadians),
  };
}

/** Bends from `leastDeg` to `mostDeg` toward anywhere, any phasings. */
export function randomChain(joints: number, leastDeg: number, mostDeg: number, uniform: Deviates): RandomChain {
  const bends = Array.from({ length: joints }, () => ({ byDeg: leastDeg + (mostDeg - leastDeg) * uniform(), towardDeg: 360 * uniform() }));
  return bentChain(
    bends,
    Array.from({ length: joints - 1 }, () => 180 * uniform() - 90),
  );
}
