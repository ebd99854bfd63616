/** What was wrong with a pulse train and put right. */
export interface PulseNote {
  readonly code: "pulses.missing" | "pulses.double";
  /** Index of the pulse that follows the gap, or of the pulse that was dropped. */
  readonly pulse: number;
  /** Seconds. */
  readonly time: number;
  /** Pulses that were missing or dropped. */
  readonly count: number;
}

export interface CleanPulses {
  /** Times kept, seconds. */
  readonly times: Float64Array;
  /** Pulse steps from the first pulse to each that is kept, missing ones counted. */
  readonly steps: Float64Array;
  readonly notes: readonly PulseNote[];
}

/** Gaps on either side that say what a gap should be; the median of them stands three wrong ones. */
const NEIGHBOURS = 4;
/** A pulse that comes this early is one too many: no driveline doubles its speed between two pulses (common practice, no source). */
const EARLY = 0.6;

/** Finds pulses that are missing or doubled by comparing each gap with the median of its neighbours. times: seconds, strictly rising. */
export function cleanPulses(times: Float64Array): CleanPulses {
  const usual = usualGaps(times);
  const kept: number[] = [];
  const notes: PulseNote[] = [];
  const timeOf = (pulse: number): number => times[pulse] as number;
  for (let i = 0; i < times.length; i++) {
    const previous = kept.at(-1);
    if (previous === undefined || timeOf(i) - timeOf(previous) >= EARLY * usual(i - 1)) {
      kept.push(i);
      continue;
    }
    // One of the two is false: the one whose removal leaves the more usual gap.
    const withoutThis = i + 1 < times.length ? Math.abs(timeOf(i + 1) - timeOf(previous) - usual(i)) : 0;
    const before = kept.at(-2);
    const withoutPrevious = before === undefined ? Number.POSITIVE_INFINITY : Math.abs(timeOf(i) - timeOf(before) - usual(i - 1));
    const dropped = withoutThis <= withoutPrevious ? i : previous;
    if (dropped === previous) kept[kept.length - 1] = i;
    notes.push({ code: "pulses.double", pulse: dropped, time: timeOf(dropped), count: 1 });
  }
  const steps = new Float64Array(kept.length);
  for (let k = 1; k < kept.length; k++) {
    const pulse = kept[k] as number;
    const gap = timeOf(pulse) - timeOf(kept[k - 1] as number);
    const count = Math.max(1, Math.round(gap / usual(pulse - 1)));
    steps[k] = (steps[k - 1] as number) + count;
    if (count > 1) notes.push({ code: "pulses.missing", pulse, time: timeOf(pulse), count: count - 1 });
  }
  return { times: Float64Array.from(kept, timeOf), steps, notes: notes.sort((a, b) => a.time - b.time) };
}

/** The median gap around gap i, which runs from pulse i to pulse i + 1. Half an hour of pulses asks this a hundred thousand times, so nothing is set up anew. */
function usualGaps(times: Float64Array): (gap: number) => number {
  const gaps = times.length - 1;
  const sorted = new Float64Array(2 * NEIGHBOURS + 1);
  return (gap) => {
    let count = 0;
    for (let i = Math.max(0, gap - NEIGHBOURS); i < Math.min(gaps, gap + NEIGHBOURS + 1); i++) {
      insert(sorted, count++, (times[i + 1] as number) - (times[i] as number));
    }
    const middle = count >> 1;
    return count % 2 === 1 ? (sorted[middle] as number) : ((sorted[middle - 1] as number) + (sorted[middle] as number)) / 2;
  };
}

/** Puts a value in its place among the first `count` of a rising list. */
function insert(sorted: Float64Array, count: number, value: number): void {
  let place = count;
  while (place > 0 && (sorted[place - 1] as number) > value) {
    sorted[place] = sorted[place - 1] as number;
    place--;
  }
  sorted[place] = value;
}
