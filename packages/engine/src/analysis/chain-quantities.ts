import type { ShaftPose } from "../geometry/index.js";
import {
  type ArmMap,
  benchSum,
  chainState,
  type Driveline,
  equivalentAngle,
  type JointState,
  sectionTurns,
  wholeChain,
} from "../kinematics/index.js";

/**
 * Every quantity of a chain that is bounded by zero, as the plane vector it is the length of, so that its uncertainty can be carried through zero.
 * Joints: the operating angle about its normal (rad). Motions: q/p of the part's arm map, whose length is tan^2(B/2). Bench: the signed sum (rad) and 0.
 */
export interface QuantityIndex {
  readonly count: number;
  readonly joint: (k: number) => number;
  readonly drive: (section: number) => number;
  readonly coast: (section: number) => number;
  readonly whole: number;
  readonly bench: number;
}

/** Places of the quantities of a chain of n joints. */
export function quantityIndex(n: number): QuantityIndex {
  return {
    count: 3 * n,
    joint: (k) => k,
    drive: (section) => n + section,
    coast: (section) => 2 * n - 1 + section,
    whole: 3 * n - 2,
    bench: 3 * n - 1,
  };
}

/** Whether the quantity at a place is a motion, whose vector is q/p. */
export const isMotion = (n: number, place: number): boolean => place >= n && place < 3 * n - 1;

function writeMotion(out: Float64Array, place: number, { pRe, pIm, qRe, qIm }: ArmMap): void {
  const size = pRe * pRe + pIm * pIm;
  out[2 * place] = (qRe * pRe + qIm * pIm) / size;
  out[2 * place + 1] = (qIm * pRe - qRe * pIm) / size;
}

/** Writes the vectors of all quantities at the given poses into `out` (length 2 x count: x0, y0, x1, y1, ...). */
export type EvaluateQuantities = (poses: readonly ShaftPose[], out: Float64Array) => void;

/** What writes the quantities of one chain, for many poses. signs: the bench rule's, or null where it does not apply (the bench place is then 0). */
export function quantitiesOf(driveline: Driveline, signs: readonly number[] | null): EvaluateQuantities {
  const n = driveline.joints.length;
  const index = quantityIndex(n);
  const turns = sectionTurns(driveline);
  const angles = new Array<number>(n).fill(0);
  return (poses, out) => {
    const state = chainState(driveline, poses, turns);
    for (let k = 0; k < n; k++) {
      const { alongU, alongV } = state.joints[k] as JointState;
      out[2 * k] = alongU;
      out[2 * k + 1] = alongV;
      angles[k] = Math.sqrt(alongU * alongU + alongV * alongV);
    }
    for (let section = 0; section < n - 1; section++) {
      writeMotion(out, index.drive(section), state.fromSource[section] as ArmMap);
      writeMotion(out, index.coast(section), state.toDriven[section + 1] as ArmMap);
    }
    writeMotion(out, index.whole, wholeChain(state));
    out[2 * index.bench] = signs ? benchSum(signs, angles) : 0;
    out[2 * index.bench + 1] = 0;
  };
}

/**
 * The length of a quantity as an angle in radians: operating angles and the bench sum as they are, motions as the equivalent angle B.
 * Angles grow in step with the errors, which keeps distributions near zero from being squeezed as those of q/p would be.
 */
export function magnitudeOf(n: number, place: number, out: Float64Array): number {
  const x = out[2 * place] as number;
  const y = out[2 * place + 1] as number;
  const size = Math.sqrt(x * x + y * y);
  return isMotion(n, place) ? equivalentAngle(size) : size;
}
