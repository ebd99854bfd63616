/** A stretch of samples without a gap, [from, to), each at a whole number of steps after its first. */
export interface SteadyRun {
  readonly from: number;
  readonly to: number;
  /** Steps since the run's first sample; a single sample that is missing leaves one out. */
  readonly steps: Int32Array;
}

/** What the time stamps of a channel say of its clock. */
export interface StampSteps {
  /** Seconds between samples. */
  readonly step: number;
  /** Root mean square distance of the stamps from even steps, as a share of a step. */
  readonly jitterShare: number;
  /** Whether stamps depart from even steps by no more than they are rounded to. */
  readonly rounded: boolean;
  readonly runs: readonly SteadyRun[];
  readonly gaps: readonly { readonly start: number; readonly seconds: number }[];
}

/** A step longer than this many is a gap: one missing sample is bridged, two are not (our choice). */
const GAP_STEPS = 2.5;
/** Stamps this near to whole numbers of steps can be counted through a missing sample. */
const COUNTABLE = 0.25;
/** Stamps of which more than this share repeat the one before are coarse; fewer are written twice. */
const COARSE_SHARE = 0.05;
/** Steps looked at for the usual one. */
const SAMPLE = 100_000;

/** Share of the stamps that repeat the one before. */
export function repeatShare(times: Float64Array): number {
  let repeats = 0;
  for (let k = 1; k < times.length; k++) if (times[k] === times[k - 1]) repeats++;
  return repeats / times.length;
}

/** Whether stamps that repeat are coarse and not written twice. */
export const isCoarse = (times: Float64Array): boolean => repeatShare(times) > COARSE_SHARE;

/**
 * Measures a clock from its stamps (seconds, never falling; two or more): usual step, gaps, then by least squares over the runs between gaps the step and
 * the jitter. Null where the stamps do not move. Yields after each pass over the stamps.
 */
export function* stampSteps(times: Float64Array): Generator<void, StampSteps | null> {
  const coarse = isCoarse(times);
  const usual = usualStep(times, coarse);
  if (usual === null) return null;
  yield;
  const resolution = stampResolution(times);
  yield;
  const gapAbove = GAP_STEPS * Math.max(usual, coarse ? resolution : 0);
  const gaps: { start: number; seconds: number }[] = [];
  const borders = [0];
  for (let k = 1; k < times.length; k++) {
    const [before, time] = [times[k - 1] as number, times[k] as number];
    if (time - before <= gapAbove) continue;
    gaps.push({ start: before, seconds: time - before });
    borders.push(k);
  }
  yield;
  const countable = !coarse && isCountable(times, usual, gapAbove);
  yield;
  const runs = borders.map((from, index) => runOf(times, from, borders[index + 1] ?? times.length, countable ? usual : null));
  yield;
  const step = fittedStep(times, runs) ?? usual;
  yield;
  const starts = runs.map((run) => runStart(times, run, step));
  yield;
  const { rms, most } = departures(times, runs, starts, step);
  return { step, jitterShare: rms / step, rounded: most <= resolution, runs, gaps };
}

/** The median step; of coarse stamps, where steps are 0 or many, the mean of the middle half of the time. */
function usualStep(times: Float64Array, coarse: boolean): number | null {
  const stride = Math.max(1, Math.floor(times.length / SAMPLE));
  const steps: number[] = [];
  for (let k = 1; k < times.length; k += stride) {
    const step = (times[k] as number) - (times[k - 1] as number);
    if (step > 0) steps.push(step);
  }
  steps.sort((a, b) => a - b);
  const median = steps[Math.floor(steps.length / 2)];
  if (median === undefined) return null;
  return coarse ? median * (1 - repeatShare(times)) : median;
}

function isCountable(times: Float64Array, usual: number, gapAbove: number): boolean {
  for (let k = 1; k < times.length; k++) {
    const step = (times[k] as number) - (times[k - 1] as number);
    if (step > gapAbove) continue;
    const steps = step / usual;
    if (steps < 1 - COUNTABLE || Math.abs(steps - Math.round(steps)) > COUNTABLE) return false;
  }
  return true;
}

function runOf(times: Float64Array, from: number, to: number, usual: number | null): SteadyRun {
  const steps = new Int32Array(to - from);
  for (let k = 1; k < steps.length; k++) {
    const step = (times[from + k] as number) - (times[from + k - 1] as number);
    steps[k] = (steps[k - 1] as number) + (usual === null ? 1 : Math.round(step / usual));
  }
  return { from, to, steps };
}

const meanOver = (length: number, value: (k: number) => number): number => {
  let sum = 0;
  for (let k = 0; k < length; k++) sum += value(k);
  return sum / length;
};

/** One step for all runs, each with a start of its own: least squares of stamp over number of steps. */
function fittedStep(times: Float64Array, runs: readonly SteadyRun[]): number | null {
  let [across, along] = [0, 0];
  for (const { from, to, steps } of runs) {
    const length = to - from;
    const [meanStep, meanTime] = [meanOver(length, (k) => steps[k] as number), meanOver(length, (k) => times[from + k] as number)];
    for (let k = 0; k < length; k++) {
      const centred = (steps[k] as number) - meanStep;
      across += centred * ((times[from + k] as number) - meanTime);
      along += centred * centred;
    }
  }
  return across > 0 && along > 0 ? across / along : null;
}

function departures(
  times: Float64Array,
  runs: readonly SteadyRun[],
  starts: readonly number[],
  step: number,
): { readonly rms: number; readonly most: number } {
  let [squares, most] = [0, 0];
  for (const [index, { from, to, steps }] of runs.entries()) {
    const start = starts[index] as number;
    for (let k = from; k < to; k++) {
      const off = (times[k] as number) - start - step * (steps[k - from] as number);
      squares += off * off;
      most = Math.max(most, Math.abs(off));
    }
  }
  return { rms: Math.sqrt(squares / times.length), most };
}

/** When the first sample of a run was taken, by all its stamps together. */
export const runStart = (times: Float64Array, { from, to, steps }: SteadyRun, step: number): number =>
  meanOver(to - from, (k) => (times[from + k] as number) - step * (steps[k] as number));

/** The step that all stamps are rounded to: a power of ten from 0.1 s down to 1e-9 s. */
function stampResolution(times: Float64Array): number {
  const stride = Math.max(1, Math.floor(times.length / SAMPLE));
  const origin = times[0] as number;
  const size = Math.max(Math.abs(origin), Math.abs(times.at(-1) as number));
  for (let power = 1; power < 9; power++) {
    const scale = 10 ** power;
    // A stamp written with so many decimals is that many whole steps, but for the rounding of the double.
    const slack = Math.max(1e-6, 8 * Number.EPSILON * size * scale);
    let whole = true;
    for (let k = 0; k < times.length && whole; k += stride) {
      const place = (times[k] as number) * scale;
      whole = Math.abs(place - Math.round(place)) <= slack;
    }
    if (whole) return 1 / scale;
  }
  return 1e-9;
}
