import { add, angleBetween, directionOf, poseOf, type ShaftPose, scale } from "../geometry/index.js";
import { type ArmMap, compose } from "./arm-map.js";
import type { Centring } from "./driveline.js";

/** A cross joint: its arm map, and its operating angle as a vector (see `cross`). */
export interface JointState {
  readonly map: ArmMap;
  /** Operating angle in radians along the joint's normal: components on the driving shaft's u and d x u. Its length is the operating angle. */
  readonly alongU: number;
  readonly alongV: number;
}

/**
 * A cross joint between a driving shaft `a` and a driven shaft `b`, from their inclinations and headings in radians, in the chain frame.
 *
 * Bases: u = (-sin h, cos h, 0), v = d x u = (sin i cos h, sin i sin h, cos i). With m = d_a x d_b = sin B n, written as complex numbers m_a and m_b in the
 * two bases, the map is q = i m_a m_b / (2 (1 + cos B)) and p = (1 + cos B)/2 times the turn that carries n's place in the first basis to its place in the
 * second, plus a quarter turn. m needs no normalising, so a joint in line is no special case. Derived from a' = d_b x a; verified against a sampled
 * recursion of arms and a multibody engine.
 */
export function crossJoint(a: ShaftPose, b: ShaftPose): JointState {
  const sinA = Math.sin(a.inclination);
  const cosA = Math.cos(a.inclination);
  const sinB = Math.sin(b.inclination);
  const cosB = Math.cos(b.inclination);
  // By half the turn, so that 1 - cos(turn) keeps its digits for nearly parallel shafts.
  const halfTurn = (b.heading - a.heading) / 2;
  const sinHalf = Math.sin(halfTurn);
  const cosHalf = Math.cos(halfTurn);
  const sinTurn = 2 * sinHalf * cosHalf;
  const versine = 2 * sinHalf * sinHalf;
  const cosTurn = 1 - versine;
  const sinDifference = sinB * cosA - cosB * sinA;

  const maRe = sinDifference + cosB * sinA * versine;
  const maIm = cosB * sinTurn;
  const mbRe = sinDifference - cosA * sinB * versine;
  const mbIm = cosA * sinTurn;
  const cosAngle = cosA * cosB * cosTurn + sinA * sinB;

  const sine = Math.sqrt(maRe * maRe + maIm * maIm);
  const angle = Math.atan2(sine, cosAngle);
  const perSine = sine === 0 ? 1 : angle / sine;
  const half = 0.5 / (1 + cosAngle);
  return {
    map: {
      pRe: -0.5 * (sinA + sinB) * sinTurn,
      pIm: 0.5 * (cosTurn * (1 + sinA * sinB) + cosA * cosB),
      qRe: -half * (maRe * mbIm + maIm * mbRe),
      qIm: half * (maRe * mbRe - maIm * mbIm),
    },
    alongU: maRe * perSine,
    alongV: maIm * perSine,
  };
}

/** A constant-velocity joint carries the arm at the same angle from the joint's normal: the turn of the cross joint without its quarter turn and without q. */
export function uniformJoint(a: ShaftPose, b: ShaftPose): JointState {
  const { map, alongU, alongV } = crossJoint(a, b);
  const size = Math.hypot(map.pRe, map.pIm);
  return { map: { pRe: map.pIm / size, pIm: -map.pRe / size, qRe: 0, qIm: 0 }, alongU, alongV };
}

/**
 * Direction of the coupling yoke of a double cross joint, between the two shafts and in their plane.
 * Without centring geometry it halves the angle. With it the triangle cross - ball - cross gives sin(b2) = (ball distance / crosses apart) sin(b) for the cross
 * on the sliding side (law of sines; derived, no published table).
 */
export function couplingPose(a: ShaftPose, b: ShaftPose, centring?: Centring): ShaftPose {
  const dA = directionOf(a);
  const dB = directionOf(b);
  if (!centring) return poseOf(add(dA, dB));
  const angle = angleBetween(dA, dB);
  const ratio = centring.ballFromCross / centring.crossesApart;
  const far = Math.asin(Math.min(1, ratio * Math.sin(angle)));
  const fixedWeight = ratio;
  const slidingWeight = Math.cos(far) - Math.cos(angle) * ratio;
  const [weightA, weightB] = centring.ballFixedTo === "source-side" ? [fixedWeight, slidingWeight] : [slidingWeight, fixedWeight];
  return poseOf(add(scale(dA, weightA), scale(dB, weightB)));
}

/** A double cross joint: two cross joints with the coupling yoke's own yokes in line. Exactly uniform only where the halves are equal. */
export function doubleCrossJoint(a: ShaftPose, b: ShaftPose, centring?: Centring): JointState {
  const { alongU, alongV } = crossJoint(a, b);
  const coupling = couplingPose(a, b, centring);
  const map = compose(crossJoint(coupling, b).map, crossJoint(a, coupling).map);
  // Equal halves cancel exactly; keeping the rounding left over would let noise pass for motion.
  return { map: centring ? map : { ...map, qRe: 0, qIm: 0 }, alongU, alongV };
}
