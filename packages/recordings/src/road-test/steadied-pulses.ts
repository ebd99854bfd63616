/** Middle of a quadratic through nine values by least squares. Source: A. Savitzky and M. J. E. Golay, Analytical Chemistry 36(8), 1964, table I. */
const WEIGHTS = [-21, 14, 39, 54, 59, 54, 39, 14, -21].map((weight) => weight / 231);
const HALF = 4;
/** Gaps further from their mean than this share hold a pulse that is missing or too many. */
const STEADY = 0.35;

/**
 * Times of pulses, in seconds and rising, each laid on the quadratic through it and its four neighbours on either side: what the steps of a sampled column
 * scatter is halved, and a steady acceleration stays as it is. Pulses at the ends, and those beside a missing or a doubled one, stay where they are.
 */
export function steadiedPulses(times: Float64Array): Float64Array {
  return times.map((time, k) => {
    if (k < HALF || k + HALF >= times.length || !isSteady(times, k)) return time;
    let sum = 0;
    for (const [i, weight] of WEIGHTS.entries()) sum += weight * ((times[k - HALF + i] as number) - time);
    return time + sum;
  });
}

function isSteady(times: Float64Array, middle: number): boolean {
  const mean = ((times[middle + HALF] as number) - (times[middle - HALF] as number)) / (2 * HALF);
  for (let k = middle - HALF; k < middle + HALF; k++) {
    const gap = (times[k + 1] as number) - (times[k] as number);
    if (Math.abs(gap - mean) > STEADY * mean) return false;
  }
  return true;
}
