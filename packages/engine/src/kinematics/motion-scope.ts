import type { Driveline, Joint } from "./driveline.js";

/** Which motions can be known, given the phasings that are. Indices as in `ChainState`. */
export interface MotionScope {
  readonly whole: boolean;
  /** [k]: motion of section k with the source turning uniformly. */
  readonly drive: readonly boolean[];
  /** [k]: motion of section k with the driven end turning uniformly. */
  readonly coast: readonly boolean[];
}

/** A joint that never disturbs the motion: ball joints, couplings, and double cross joints with equal halves. */
export const isUniform = (joint: Joint): boolean =>
  joint.kind === "ball" || joint.kind === "flexible" || (joint.kind === "double-cross" && !joint.centring);

/** Places of the joints among [from, to] that disturb the motion, in power order. */
export const disturbingJoints = ({ joints }: Driveline, from = 0, to = joints.length - 1): readonly number[] =>
  joints.flatMap((joint, k) => (k < from || k > to || isUniform(joint) ? [] : [k]));

/** Whether section s lies between the first and the last of these joints, so that its phasing counts for how they stand to one another. */
export const isBetween = (section: number, disturbing: readonly number[]): boolean =>
  section >= (disturbing[0] ?? 0) && section < (disturbing.at(-1) ?? 0);

/**
 * The motion over joints [from, to] depends on how the disturbing joints stand to one another, hence on every phasing between the first and the last of them.
 * One disturbing joint alone needs no phasing at all. Beside a joint without yokes a phasing runs to a mark carried straight across it, whose place such a
 * joint keeps, since it turns evenly (docs/decisions/0004).
 */
function known(driveline: Driveline, from: number, to: number): boolean {
  const disturbing = disturbingJoints(driveline, from, to);
  return driveline.sections.every(({ phasing }, s) => phasing !== null || !isBetween(s, disturbing));
}

/** Says for every part of the driveline whether its motion follows from the phasings given. */
export function motionScope(driveline: Driveline): MotionScope {
  const last = driveline.joints.length - 1;
  return {
    whole: known(driveline, 0, last),
    drive: driveline.sections.map((_, k) => known(driveline, 0, k)),
    coast: driveline.sections.map((_, k) => known(driveline, k + 1, last)),
  };
}
