/**
 * How a chain of joints carries the source arm to the driven arm.
 *
 * An arm is a vector across its shaft. A cross joint takes the driving arm a to d_out x a, which is linear in a; so is a turn by a phasing, so is a whole
 * chain. Written in complex numbers (real part along u, imaginary part along d x u of each shaft's own basis) every real 2x2 matrix is
 * `a -> p a + q conj(a)`: p turns and scales, q alone makes the turning non-uniform. Its singular values are |p| + |q| and |p| - |q|, so the equivalent
 * joint is `tan^2(B/2) = |q| / |p|` with no difference of nearly equal numbers anywhere.
 */
export interface ArmMap {
  readonly pRe: number;
  readonly pIm: number;
  readonly qRe: number;
  readonly qIm: number;
}

/** The map of a rigid turn by `angle` radians, right-hand about the shaft direction. */
export const rotationMap = (angle: number): ArmMap => ({ pRe: Math.cos(angle), pIm: Math.sin(angle), qRe: 0, qIm: 0 });

/** First `first`, then `second`. */
export function compose(second: ArmMap, first: ArmMap): ArmMap {
  const { pRe: a, pIm: b, qRe: c, qIm: d } = second;
  const { pRe: e, pIm: f, qRe: g, qIm: h } = first;
  return {
    pRe: a * e - b * f + c * g + d * h,
    pIm: a * f + b * e + d * g - c * h,
    qRe: a * g - b * h + c * e + d * f,
    qIm: a * h + b * g + d * e - c * f,
  };
}

/** The chain run backwards, up to a positive factor: the driven arm carried to the source arm. */
export const reverse = ({ pRe, pIm, qRe, qIm }: ArmMap): ArmMap => ({ pRe, pIm: -pIm, qRe: -qRe, qIm: -qIm });
