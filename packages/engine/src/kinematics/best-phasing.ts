import type { ShaftPose } from "../geometry/index.js";
import type { Radians } from "../units/index.js";
import { chainState } from "./chain.js";
import type { Driveline } from "./driveline.js";
import { disturbingJoints, isBetween } from "./motion-scope.js";

/** Below this product of the two sides' unevenness a phasing changes nothing that could be measured (about 0.001 degrees of equivalent angle). */
const NO_DIFFERENCE = 1e-20;

/**
 * For each section the phasing, in (-pi/2, pi/2], that leaves the smallest equivalent angle with all other phasings as they stand.
 * The whole is R turn(f) L, so q = pR qL e^(jf) + qR conj(pL) e^(-jf); its size is least where the two terms oppose. Closed form, no search.
 * Sections where it makes no difference, or where a neighbour's phasing is unknown, are left out.
 */
export function bestPhasing(driveline: Driveline, poses: readonly ShaftPose[]): ReadonlyMap<string, Radians> {
  const state = chainState(driveline, poses);
  const best = new Map<string, Radians>();
  driveline.sections.forEach((section, s) => {
    const left = state.fromSource[s];
    const right = state.toDriven[s + 1];
    if (!left || !right || !armsTied(driveline, s)) return;
    const size = Math.hypot(left.qRe, left.qIm) * Math.hypot(right.qRe, right.qIm);
    if (size < NO_DIFFERENCE) return;
    const ahead = Math.atan2(right.pIm, right.pRe) + Math.atan2(left.qIm, left.qRe);
    const behind = Math.atan2(right.qIm, right.qRe) - Math.atan2(left.pIm, left.pRe);
    best.set(section.id, halfTurn((behind - ahead + Math.PI) / 2));
  });
  return best;
}

/** Whether every phasing between this section and the disturbing joints on both sides of it is known. */
function armsTied(driveline: Driveline, section: number): boolean {
  const disturbing = disturbingJoints(driveline);
  return driveline.sections.every(({ phasing }, s) => s === section || phasing !== null || !isBetween(s, disturbing));
}

/** Brings an angle into (-pi/2, pi/2]: phasings repeat every half turn. */
function halfTurn(angle: number): Radians {
  const wrapped = angle - Math.PI * Math.ceil((angle - Math.PI / 2) / Math.PI);
  return wrapped as Radians;
}
