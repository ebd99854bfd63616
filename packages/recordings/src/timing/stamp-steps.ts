import type { Column } from "./long-column.js";
import { lookInto, throughColumn } from "./through-column.js";

/** A stretch of samples without a gap, [from, to), each at a whole number of steps after its first. */
export interface SteadyRun {
  readonly from: number;
  readonly to: number;
  /** Seconds by which steps are counted, so that a single sample that is missing leaves one out; null where every sample is the next step. */
  readonly countedBy: number | null;
  /** Steps from its first sample to its last. */
  readonly steps: number;
  /** When its first sample was taken, by all its stamps together. */
  readonly start: number;
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

/** Whether stamps that repeat are coarse and not written twice. */
export const isCoarse = (repeats: number, stamps: number): boolean => repeats / stamps > COARSE_SHARE;

/** Steps from one stamp to the next, seconds apart by `gap`. */
export const stepsIn = (gap: number, countedBy: number | null): number => (countedBy === null ? 1 : Math.round(gap / countedBy));

/**
 * Measures a clock from its stamps (seconds, never falling; two or more), of which `repeats` repeat the one before: usual step, gaps, then by least squares
 * over the runs between gaps the step and the jitter. Null where the stamps do not move. Goes through the stamps six times, and yields as it goes.
 */
export function* stampSteps(times: Column, repeats: number): Generator<void, StampSteps | null> {
  const coarse = isCoarse(repeats, times.length);
  const { median, resolution } = yield* sampled(times);
  if (median === null) return null;
  // Of coarse stamps, where steps are 0 or many, the mean of the middle half of the time.
  const usual = coarse ? median * (1 - repeats / times.length) : median;
  const gapAbove = GAP_STEPS * Math.max(usual, coarse ? resolution : 0);
  const { gaps, borders } = yield* gapsOf(times, gapAbove);
  const countedBy = !coarse && (yield* isCountable(times, usual, gapAbove)) ? usual : null;
  const pieces = borders.map((from, index) => ({ from, to: borders[index + 1] ?? times.length }));
  const means = yield* meansOf(times, pieces, countedBy);
  const step = (yield* fittedStep(times, pieces, countedBy, means)) ?? usual;
  const starts = yield* startsOf(times, pieces, countedBy, step);
  const { rms, most } = yield* departures(times, pieces, countedBy, starts, step);
  return {
    step,
    jitterShare: rms / step,
    rounded: most <= resolution,
    runs: pieces.map((piece, k) => ({ ...piece, countedBy, steps: (means[k] as Means).steps, start: starts[k] as number })),
    gaps,
  };
}

/** The median step, null where the stamps do not move, and what stamps are rounded to: a power of ten from 0.1 s down to 1e-9 s. */
function* sampled(times: Column): Generator<void, { readonly median: number | null; readonly resolution: number }> {
  const stride = Math.max(1, Math.floor(times.length / SAMPLE));
  const at = lookInto(times);
  const size = Math.max(Math.abs(at(times.length - 1)), Math.abs(at(0)));
  const scales = Array.from({ length: 8 }, (_, k) => 10 ** (k + 1));
  // A stamp written with so many decimals is that many whole steps, but for the rounding of the double.
  const slacks = scales.map((scale) => Math.max(1e-6, 8 * Number.EPSILON * size * scale));
  const whole = scales.map(() => true);
  const steps: number[] = [];
  let before = Number.NaN;
  yield* throughColumn(times, 0, times.length, (time, k) => {
    if (k % stride === 0) {
      for (const [power, scale] of scales.entries())
        if (whole[power] && Math.abs(time * scale - Math.round(time * scale)) > (slacks[power] as number)) whole[power] = false;
    }
    if (k > 0 && (k - 1) % stride === 0 && time - before > 0) steps.push(time - before);
    before = time;
  });
  steps.sort((a, b) => a - b);
  const finest = whole.indexOf(true);
  return { median: steps[Math.floor(steps.length / 2)] ?? null, resolution: finest < 0 ? 1e-9 : 1 / (scales[finest] as number) };
}

function* gapsOf(times: Column, gapAbove: number): Generator<void, Pick<StampSteps, "gaps"> & { readonly borders: readonly number[] }> {
  const gaps: { start: number; seconds: number }[] = [];
  const borders = [0];
  let before = Number.POSITIVE_INFINITY;
  yield* throughColumn(times, 0, times.length, (time, k) => {
    if (time - before > gapAbove) {
      gaps.push({ start: before, seconds: time - before });
      borders.push(k);
    }
    before = time;
  });
  return { gaps, borders };
}

function* isCountable(times: Column, usual: number, gapAbove: number): Generator<void, boolean> {
  let [before, countable] = [Number.NaN, true];
  yield* throughColumn(times, 0, times.length, (time, k) => {
    const step = time - before;
    before = time;
    if (k === 0 || step > gapAbove) return;
    const steps = step / usual;
    if (steps < 1 - COUNTABLE || Math.abs(steps - Math.round(steps)) > COUNTABLE) countable = false;
  });
  return countable;
}

interface Piece {
  readonly from: number;
  readonly to: number;
}

/** Visits every stamp with its number of steps since its piece began, and the piece. */
function* throughPieces(
  times: Column,
  pieces: readonly Piece[],
  countedBy: number | null,
  visit: (time: number, steps: number, piece: number) => void,
): Generator<void> {
  let [piece, steps, before] = [0, 0, 0];
  yield* throughColumn(times, 0, times.length, (time, k) => {
    if (k === pieces[piece]?.to) piece++;
    steps = k === pieces[piece]?.from ? 0 : steps + stepsIn(time - before, countedBy);
    before = time;
    visit(time, steps, piece);
  });
}

interface Means {
  readonly step: number;
  readonly time: number;
  readonly steps: number;
}

function* meansOf(times: Column, pieces: readonly Piece[], countedBy: number | null): Generator<void, readonly Means[]> {
  const sums = pieces.map(() => ({ step: 0, time: 0, steps: 0 }));
  yield* throughPieces(times, pieces, countedBy, (time, steps, piece) => {
    const sum = sums[piece] as (typeof sums)[number];
    sum.step += steps;
    sum.time += time;
    sum.steps = steps;
  });
  return sums.map(({ step, time, steps }, k) => {
    const { from, to } = pieces[k] as Piece;
    return { step: step / (to - from), time: time / (to - from), steps };
  });
}

/** One step for all runs, each with a start of its own: least squares of stamp over number of steps. */
function* fittedStep(
  times: Column,
  pieces: readonly Piece[],
  countedBy: number | null,
  means: readonly Means[],
): Generator<void, number | null> {
  let [across, along] = [0, 0];
  yield* throughPieces(times, pieces, countedBy, (time, steps, piece) => {
    const mean = means[piece] as Means;
    const centred = steps - mean.step;
    across += centred * (time - mean.time);
    along += centred * centred;
  });
  return across > 0 && along > 0 ? across / along : null;
}

function* startsOf(times: Column, pieces: readonly Piece[], countedBy: number | null, step: number): Generator<void, readonly number[]> {
  const sums = new Array<number>(pieces.length).fill(0);
  yield* throughPieces(times, pieces, countedBy, (time, steps, piece) => {
    sums[piece] = (sums[piece] as number) + (time - step * steps);
  });
  return sums.map((sum, k) => sum / ((pieces[k] as Piece).to - (pieces[k] as Piece).from));
}

function* departures(
  times: Column,
  pieces: readonly Piece[],
  countedBy: number | null,
  starts: readonly number[],
  step: number,
): Generator<void, { readonly rms: number; readonly most: number }> {
  let [squares, most] = [0, 0];
  yield* throughPieces(times, pieces, countedBy, (time, steps, piece) => {
    const off = time - (starts[piece] as number) - step * steps;
    squares += off * off;
    most = Math.max(most, Math.abs(off));
  });
  return { rms: Math.sqrt(squares / times.length), most };
}
