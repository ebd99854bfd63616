/**
 * Natural cubic spline through evenly spaced samples: value at a place counted in samples, 0 to length - 1. Two samples or more.
 * Away from its ends it is the spline of Fyfe and Munck 1997; the ends, where the curvature is set to 0, are forgotten by a factor of 3.7 per sample.
 */
export function cubicSpline(samples: Float64Array): (place: number) => number {
  const count = samples.length;
  const curvature = curvatures(samples);
  return (place) => {
    const i = Math.min(Math.max(Math.floor(place), 0), count - 2);
    const b = place - i;
    const a = 1 - b;
    // Products, since a power of a double takes twenty times as long.
    const bent = (a * a * a - a) * (curvature[i] as number) + (b * b * b - b) * (curvature[i + 1] as number);
    return a * (samples[i] as number) + b * (samples[i + 1] as number) + bent / 6;
  };
}

/** Second differences of the spline at its samples: m(i-1) + 4 m(i) + m(i+1) = 6 (y(i-1) - 2 y(i) + y(i+1)), 0 at both ends. */
function curvatures(y: Float64Array): Float64Array {
  const last = y.length - 1;
  const m = new Float64Array(y.length);
  const upper = new Float64Array(y.length);
  for (let i = 1; i < last; i++) {
    const pivot = 1 / (4 - (upper[i - 1] as number));
    upper[i] = pivot;
    m[i] = (6 * ((y[i - 1] as number) - 2 * (y[i] as number) + (y[i + 1] as number)) - (m[i - 1] as number)) * pivot;
  }
  for (let i = last - 1; i > 0; i--) m[i] = (m[i] as number) - (upper[i] as number) * (m[i + 1] as number);
  return m;
}
