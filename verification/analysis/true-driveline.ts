import { secondFormulation } from "../kinematics/second-formulation.js";
import { angleBetween, cross, dot, length, type Vector } from "../kinematics/vectors.js";

/** Where the driven end lies from the source. */
export type Runs = "forward" | "rearward";

/** A driveline of cross joints as it really lies, in the directions of the vehicle (X forward, Y left, Z up); nobody knows it but the simulation. Radians. */
export interface TrueDriveline {
  readonly runs: Runs;
  /** Ids of the sections. */
  readonly sections: readonly string[];
  readonly lengthsMm: readonly number[];
  /** From each shaft's source end to its driven end: source, sections, driven. */
  readonly directions: readonly Vector[];
  readonly phasings: readonly number[];
}

export const shaftsOf = ({ sections }: TrueDriveline): readonly string[] => ["source", ...sections, "driven"];

/** Direction of a shaft whose driven end lies lower by `fall` and toward the vehicle's left by `left`, both in radians. */
export const shaftInVehicle = (runs: Runs, fall: number, left: number): Vector => [
  (runs === "forward" ? 1 : -1) * Math.cos(fall) * Math.cos(left),
  Math.cos(fall) * Math.sin(left),
  -Math.sin(fall),
];

/** How a direction is written in results: inclination (driven end lower) and heading, positive toward Z x (the way the power flows). */
export function poseInResults(runs: Runs, direction: Vector): { readonly inclination: number; readonly heading: number } {
  const along: Vector = runs === "forward" ? [1, 0, 0] : [-1, 0, 0];
  const aside = cross([0, 0, 1], along);
  return {
    inclination: Math.atan2(-direction[2], Math.hypot(direction[0], direction[1])),
    heading: Math.atan2(dot(direction, aside), dot(direction, along)),
  };
}

/** What is true of the driveline's joints and motion. Radians; accelerations over squared shaft speed. */
export interface TrueMotion {
  readonly joints: readonly number[];
  readonly equivalent: number;
  readonly peakToPeak: number;
  readonly acceleration: number;
  readonly drive: readonly number[];
  readonly coast: readonly number[];
  /** Sum of joint angles by hand, or null where a phasing is neither in line nor a quarter turn. */
  readonly bench: number | null;
}

/** Joint angles by vectors, motion by the second formulation, both straight from the directions in the vehicle. */
export function trueMotion({ directions, phasings }: TrueDriveline): TrueMotion {
  const joints = directions.slice(1).map((b, k) => angleBetween(directions[k] as Vector, b));
  const { whole, drive, coast } = secondFormulation(directions, phasings);
  return {
    joints,
    equivalent: whole.equivalentAngle,
    peakToPeak: whole.peakToPeak,
    acceleration: whole.accelerationCoefficient,
    drive: drive.map((motion) => motion.accelerationCoefficient),
    coast: coast.map((motion) => motion.accelerationCoefficient),
    bench: benchByHand(joints, phasings),
  };
}

/** The rule as done by hand: take the next joint off, unless the yokes between are a quarter turn apart; then add it. */
function benchByHand(joints: readonly number[], phasings: readonly number[]): number | null {
  let [sum, adding] = [joints[0] as number, true];
  for (const [s, phasing] of phasings.entries()) {
    const isLine = Math.abs(Math.sin(phasing)) < 1e-9;
    if (!isLine && Math.abs(Math.cos(phasing)) >= 1e-9) return null;
    if (isLine) adding = !adding;
    sum += (adding ? 1 : -1) * (joints[s + 1] as number);
  }
  return Math.abs(sum);
}

/** Largest angle of a shaft out of the plane that holds the first two that are not in line; 0 where all lie in one plane. */
export function outOfFirstPlane(directions: readonly Vector[]): number {
  const [first] = directions as readonly [Vector];
  const normal = directions.map((d) => cross(first, d)).reduce((best, next) => (length(next) > length(best) ? next : best));
  const size = length(normal);
  return size === 0 ? 0 : Math.max(...directions.map((d) => Math.asin(Math.min(1, Math.abs(dot(d, normal)) / size))));
}
