/** A function made of quartics, one per segment: segment i from knots[i] to knots[i + 1], in powers of the distance from knots[i]. */
export interface PiecewisePolynomial {
  readonly knots: Float64Array;
  /** Five coefficients per segment, constant first. */
  readonly coefficients: Float64Array;
}

/** The segment that holds x, by bisection; the first or last where x lies outside. */
export function segmentOf(knots: Float64Array, x: number): number {
  let low = 0;
  let high = knots.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((knots[middle] as number) <= x) low = middle;
    else high = middle;
  }
  return low;
}

// Each by itself and as a bare number: together in an object they would cost more than they take to work out, and these are asked for by the million.

/** Value at x, from segment i. */
export function valueIn({ knots, coefficients: c }: PiecewisePolynomial, i: number, x: number): number {
  const s = x - (knots[i] as number);
  const at = 5 * i;
  return (
    (c[at] as number) + s * ((c[at + 1] as number) + s * ((c[at + 2] as number) + s * ((c[at + 3] as number) + s * (c[at + 4] as number))))
  );
}

/** First derivative at x, from segment i. */
export function slopeIn({ knots, coefficients: c }: PiecewisePolynomial, i: number, x: number): number {
  const s = x - (knots[i] as number);
  const at = 5 * i;
  return (c[at + 1] as number) + s * (2 * (c[at + 2] as number) + s * (3 * (c[at + 3] as number) + s * 4 * (c[at + 4] as number)));
}

/** Second derivative at x, from segment i. */
export function curveIn({ knots, coefficients: c }: PiecewisePolynomial, i: number, x: number): number {
  const s = x - (knots[i] as number);
  const at = 5 * i;
  return 2 * (c[at + 2] as number) + s * (6 * (c[at + 3] as number) + s * 12 * (c[at + 4] as number));
}

/** Slopes at knots from the parabola through each knot and its neighbours: exact for quadratics. Three knots or more; the ends take the parabola beside them. */
export function parabolicSlopes(x: Float64Array, y: Float64Array): Float64Array {
  const secant = (i: number): number => ((y[i + 1] as number) - (y[i] as number)) / ((x[i + 1] as number) - (x[i] as number));
  const gap = (i: number): number => (x[i + 1] as number) - (x[i] as number);
  const last = x.length - 1;
  return Float64Array.from(x, (_, i) => {
    const j = Math.min(Math.max(i, 1), last - 1);
    const curve = (secant(j) - secant(j - 1)) / (gap(j - 1) + gap(j));
    if (i === 0) return secant(0) - gap(0) * curve;
    if (i === last) return secant(last - 1) + gap(last - 1) * curve;
    return secant(j - 1) + gap(j - 1) * curve;
  });
}

/**
 * Slopes that let a cubic through the knots rise and fall only where the data do: where neighbouring secants differ in sign the slope is 0,
 * elsewhere no slope is more than three times the smaller secant beside it.
 * Source: F. N. Fritsch and R. E. Carlson, "Monotone piecewise cubic interpolation", SIAM J. Numer. Anal. 17(2), 1980 (the sufficient box of theorem 1).
 */
export function monotoneSlopes(x: Float64Array, y: Float64Array): Float64Array {
  if (x.length < 3) return new Float64Array(x.length).fill(((y[1] as number) - (y[0] as number)) / ((x[1] as number) - (x[0] as number)));
  const secant = (i: number): number => ((y[i + 1] as number) - (y[i] as number)) / ((x[i + 1] as number) - (x[i] as number));
  const last = x.length - 1;
  return parabolicSlopes(x, y).map((slope, i) => {
    const before = secant(Math.max(0, i - 1));
    const after = secant(Math.min(last - 1, i));
    if (before * after <= 0) return 0;
    const most = 3 * Math.min(Math.abs(before), Math.abs(after));
    return Math.sign(before) * Math.min(Math.max(Math.sign(before) * slope, 0), most);
  });
}

/** The cubic of each segment with given values and slopes at its ends. */
export function cubicThrough(x: Float64Array, y: Float64Array, slopes: Float64Array): PiecewisePolynomial {
  const coefficients = new Float64Array(5 * (x.length - 1));
  for (let i = 0; i + 1 < x.length; i++) {
    const h = (x[i + 1] as number) - (x[i] as number);
    const secant = ((y[i + 1] as number) - (y[i] as number)) / h;
    const [d0, d1] = [slopes[i] as number, slopes[i + 1] as number];
    coefficients.set([y[i] as number, d0, (3 * secant - 2 * d0 - d1) / h, (d0 + d1 - 2 * secant) / h ** 2, 0], 5 * i);
  }
  return { knots: x, coefficients };
}

/** Integral of cubics from the first knot on. */
export function integralOf(p: PiecewisePolynomial): PiecewisePolynomial {
  const coefficients = new Float64Array(p.coefficients.length);
  let reached = 0;
  for (let i = 0; i + 1 < p.knots.length; i++) {
    coefficients[5 * i] = reached;
    for (let k = 0; k < 4; k++) coefficients[5 * i + k + 1] = (p.coefficients[5 * i + k] as number) / (k + 1);
    reached = valueIn({ knots: p.knots, coefficients }, i, p.knots[i + 1] as number);
  }
  return { knots: p.knots, coefficients };
}
