/** A stretch of a speed log. */
export interface Stretch {
  readonly times: Float64Array;
  readonly speeds: Float64Array;
}

/**
 * The longest stretch of a log in which the speed stays at or above `least`, in the log's own unit; empty where it never is.
 * times: seconds, as many as speeds; readings that are no number end a stretch.
 */
export function movingStretch(times: Float64Array, speeds: Float64Array, least: number): Stretch {
  let [bestFrom, bestTo, from, longest] = [0, 0, 0, -1];
  for (let i = 0; i <= speeds.length; i++) {
    if (i < speeds.length && (speeds[i] as number) >= least) continue;
    const lasted = i > from ? (times[i - 1] as number) - (times[from] as number) : -1;
    if (lasted > longest) [bestFrom, bestTo, longest] = [from, i, lasted];
    from = i + 1;
  }
  return { times: times.slice(bestFrom, bestTo), speeds: speeds.slice(bestFrom, bestTo) };
}
