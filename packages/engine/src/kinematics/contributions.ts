import type { ShaftPose } from "../geometry/index.js";
import type { Radians } from "../units/index.js";
import { type ArmMap, compose, rotationMap } from "./arm-map.js";
import { chainState, wholeChain } from "./chain.js";
import type { Driveline } from "./driveline.js";
import { equivalentAngle, unevennessOf } from "./equivalent-joint.js";
import { motionScope } from "./motion-scope.js";

/** What one joint adds to the unevenness of the whole chain, as an arrow in the plane of q/p. Components in rad^2; the length is close to B^2. */
export interface Contribution {
  readonly joint: string;
  readonly re: number;
  readonly im: number;
}

/** The arrows of all joints and what they leave. */
export interface Contributions {
  readonly joints: readonly Contribution[];
  readonly sum: { readonly re: number; readonly im: number };
  /** Equivalent angle of the arrow sum, radians in [0, pi/2): exact where all shafts lie in one plane and phasings are in line or a quarter turn. */
  readonly fromSum: Radians;
  /** Exact equivalent angle, radians in [0, pi/2). */
  readonly exact: Radians;
}

/**
 * Splits the unevenness of a chain into one arrow for each joint, to leading order.
 *
 * With every map written `a -> p a + q conj(a)`, the chain's q/p is, to first order in the single q, the sum of (q_k/p_k) conj(P_k)/P_k, where P_k is the
 * product of all p (phasings included) ahead of joint k: each joint's own unevenness at twice its phase. The length taken is 4 artanh(|q_k|/|p_k|)
 * = -2 ln cos B_k = B_k^2 (1 + B_k^2/6 + ...), because for shafts in one plane artanh of the unevenness adds exactly: cos B_eq is then the product of cos(B_k)
 * to the power +1 or -1. Elsewhere the relative error is of the order of B^2. Derived here; held against the exact chain in the tests.
 *
 * Poses: n + 1, power order, chain frame. null where a phasing that matters is not known, and where a joint stands at a right angle or more, past which none turns.
 */
export function contributions(driveline: Driveline, poses: readonly ShaftPose[]): Contributions | null {
  if (!motionScope(driveline).whole) return null;
  const state = chainState(driveline, poses);
  if (state.joints.some(({ alongU, alongV }) => Math.hypot(alongU, alongV) >= Math.PI / 2)) return null;
  let ahead: ArmMap = rotationMap(0);
  let [sumRe, sumIm] = [0, 0];
  const joints = driveline.joints.map(({ id }, k) => {
    const { map } = state.joints[k] as { map: ArmMap };
    const unevenness = unevennessOf(map);
    const length = 4 * Math.atanh(unevenness);
    const phase = Math.atan2(map.qIm, map.qRe) - Math.atan2(map.pIm, map.pRe) - 2 * Math.atan2(ahead.pIm, ahead.pRe);
    const re = length * Math.cos(phase);
    const im = length * Math.sin(phase);
    sumRe += re;
    sumIm += im;
    const turn = rotationMap(driveline.sections[k]?.phasing ?? 0);
    ahead = compose(turn, compose({ ...map, qRe: 0, qIm: 0 }, ahead));
    return { joint: id, re, im };
  });
  return {
    joints,
    sum: { re: sumRe, im: sumIm },
    fromSum: equivalentAngle(Math.tanh(Math.hypot(sumRe, sumIm) / 4)),
    exact: equivalentAngle(unevennessOf(wholeChain(state))),
  };
}
