/** Samples with their times. */
export interface Stamped {
  readonly times: Float64Array;
  readonly values: Float64Array;
  /** Samples left out because their time was there already. */
  readonly repeats: number;
}

/** Of several samples at one time the first stays. Times: never falling. Arrays without a repeat are given back as they are. */
export function withoutRepeats(times: Float64Array, values: Float64Array): Stamped {
  let repeats = 0;
  for (let k = 1; k < times.length; k++) if (times[k] === times[k - 1]) repeats++;
  if (repeats === 0) return { times, values, repeats };
  const kept = { times: new Float64Array(times.length - repeats), values: new Float64Array(times.length - repeats), repeats };
  for (let k = 0, at = 0; k < times.length; k++) {
    if (k > 0 && times[k] === times[k - 1]) continue;
    kept.times[at] = times[k] as number;
    kept.values[at] = values[k] as number;
    at++;
  }
  return kept;
}
