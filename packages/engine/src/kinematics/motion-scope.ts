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

/**
 * The motion over joints [from, to] depends on how the disturbing joints stand to one another, hence on every phasing between the first and the last of them.
 * One disturbing joint alone needs no phasing at all.
 */
function known(driveline: Driveline, from: number, to: number): boolean {
  let first = -1;
  let last = -1;
  for (let k = from; k <= to; k++) {
    if (isUniform(driveline.joints[k] as Joint)) continue;
    if (first < 0) first = k;
    last = k;
  }
  for (let s = first; s >= 0 && s < last; s++) {
    if (driveline.sections[s]?.phasing === null) return false;
  }
  return true;
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
