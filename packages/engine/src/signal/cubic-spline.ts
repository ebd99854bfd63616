/**
 * Natural cubic spline through evenly spaced samples: value at a place counted in samples, 0 to length - 1. Two samples or more.
 * Away from its ends it is the spline of Fyfe and Munck 1997; the ends, where the curvature is set to 0, are forgotten by a factor of 3.7 per sample.
 */
export function cubicSpline(samples: Float64Array): (place: number) => number {
  const curvature = new Float64Array(samples.length);
  curvatures(samples, curvature);
  const weights = new Float64Array(4);
  return (place) => {
    const i = weighPlace(place, samples.length, weights, 0);
    return weighed(samples, curvature, i, weights, 0);
  };
}

/** Many readings of splines at the same places: where they lie is worked out once for all. */
export interface SplinePlaces {
  /** places: counted in samples, of which every piece has `count`. */
  readonly set: (places: Float64Array, count: number) => void;
  /** Fills `out` with the values at the places of the spline through a piece. */
  readonly read: (samples: Float64Array, out: Float64Array) => void;
}

/** Room for splines of one piece after another; it grows as it must. */
export function splinePlaces(): SplinePlaces {
  let before = new Int32Array(0);
  let weights = new Float64Array(0);
  let curvature = new Float64Array(0);
  return {
    set: (places, count) => {
      if (before.length < places.length) {
        before = new Int32Array(places.length);
        weights = new Float64Array(4 * places.length);
      }
      for (let n = 0; n < places.length; n++) before[n] = weighPlace(places[n] as number, count, weights, 4 * n);
    },
    read: (samples, out) => {
      if (curvature.length < samples.length) curvature = new Float64Array(samples.length);
      curvatures(samples, curvature);
      for (let n = 0; n < out.length; n++) out[n] = weighed(samples, curvature, before[n] as number, weights, 4 * n);
    },
  };
}

/** Writes what a place takes of the samples on either side and of their curvatures; returns the one before. */
function weighPlace(place: number, count: number, weights: Float64Array, at: number): number {
  const i = Math.min(Math.max(Math.floor(place), 0), count - 2);
  const b = place - i;
  const a = 1 - b;
  weights[at] = a;
  weights[at + 1] = b;
  // Products, since a power of a double takes twenty times as long.
  weights[at + 2] = (a * a * a - a) / 6;
  weights[at + 3] = (b * b * b - b) / 6;
  return i;
}

const weighed = (samples: Float64Array, curvature: Float64Array, i: number, weights: Float64Array, at: number): number =>
  (weights[at] as number) * (samples[i] as number) +
  (weights[at + 1] as number) * (samples[i + 1] as number) +
  (weights[at + 2] as number) * (curvature[i] as number) +
  (weights[at + 3] as number) * (curvature[i + 1] as number);

/** Pivots of the elimination below: 1/4, 1/(4 - 1/4), ..., which after some twenty no longer change. */
const PIVOTS = Float64Array.from({ length: 32 }, (_, i) => pivot(i));
const SETTLED = PIVOTS.length - 1;

function pivot(i: number): number {
  return i === 0 ? 0 : 1 / (4 - pivot(i - 1));
}

/** Second differences of the spline at its samples: m(i-1) + 4 m(i) + m(i+1) = 6 (y(i-1) - 2 y(i) + y(i+1)), 0 at both ends. */
function curvatures(y: Float64Array, m: Float64Array): void {
  const last = y.length - 1;
  m[0] = 0;
  m[last] = 0;
  for (let i = 1; i < last; i++)
    m[i] =
      (6 * ((y[i - 1] as number) - 2 * (y[i] as number) + (y[i + 1] as number)) - (m[i - 1] as number)) *
      (PIVOTS[Math.min(i, SETTLED)] as number);
  for (let i = last - 1; i > 0; i--) m[i] = (m[i] as number) - (PIVOTS[Math.min(i, SETTLED)] as number) * (m[i + 1] as number);
}
