import { transformSize } from "../signal/real-fft.js";
import type { ShaftAngle } from "../signal/shaft-angle.js";
import { fitBlock } from "./block-fit.js";
import type { NoisyBlock } from "./line-amplitude.js";
import type { FitColumn } from "./order-lines.js";
import { type PackedBlocks, packedBlocks } from "./packed-blocks.js";
import { type Band, noiseAround, type ResidualPower, residualPowers } from "./residual-noise.js";
import type { Run } from "./run.js";
import { foldedFrequency } from "./sensor-checks.js";
import { waveMaker } from "./waves.js";

/** A column, or an order above half the rate, over the run. */
export interface ColumnCourse {
  /** blocks[channel]: the blocks in which it shows. */
  readonly blocks: readonly PackedBlocks[];
  /** Middle frequency in each of those blocks, Hz. */
  readonly frequencies: readonly number[];
  /** Index of each of those blocks. */
  readonly places: readonly number[];
}

/** One block of the run: its middle in seconds and the reference shaft's turns per second. */
export interface BlockPlace {
  readonly time: number;
  readonly turnsPerSecond: number;
}

/** What the fit of a whole run found. */
export interface RunFit {
  readonly columns: readonly ColumnCourse[];
  /** Orders above half the rate, looked for where they would have folded to. */
  readonly folded: readonly FoldedCourse[];
  readonly places: readonly BlockPlace[];
  /** Sums of squares per channel: all, about a line in each block, and what no order explains. */
  readonly squares: readonly number[];
  readonly residualSquares: readonly number[];
  readonly residual: ResidualCourse;
}

export interface FoldedCourse extends ColumnCourse {
  readonly column: FitColumn;
  /** Blocks in which it would lie on a column and so cannot be told from it, by index of the column. */
  readonly hiddenBehind: ReadonlyMap<number, readonly number[]>;
}

/** Power of what is left, against frequency, of the slower and the faster half of the blocks. */
export interface ResidualCourse {
  /** Hz. */
  readonly spacing: number;
  /** Variance of white noise of the same density, by cell; channels averaged in units of their own total. */
  readonly slower: Float64Array;
  readonly faster: Float64Array;
  /** Mean speed of the faster half over that of the slower, >= 1. */
  readonly speedRatio: number;
}

/** Cells of the residual's power against frequency, at most. */
const MOST_CELLS = 400;
/** Nearer than this many lines, a folded order and a column are one. */
const HIDDEN = 2;

/**
 * Fits all columns in each of `count` blocks of equal turns, or in every so-manieth of them; yields the share done. Holds one block, and a few numbers of each.
 * factor: by which all columns lie higher than their place (see Reading).
 */
export function* fitRun(
  run: Run,
  angle: ShaftAngle,
  columns: readonly FitColumn[],
  folding: readonly FitColumn[],
  count: number,
  factor: number,
  every = 1,
): Generator<number, RunFit> {
  const edges = blockEdges(run, angle, count);
  const powerOf = residualPowers(run.rate);
  const wavesOf = waveMaker();
  const courses = columns.map(() => emptyCourse(run.readers.length));
  const folded = folding.map((column) => ({ column, ...emptyCourse(run.readers.length), hiddenBehind: new Map<number, number[]>() }));
  const places: BlockPlace[] = [];
  const squares = run.readers.map(() => 0);
  const residualSquares = run.readers.map(() => 0);
  const middle = medianSpeed(run, angle, edges);
  const cells = emptyCells(run.rate, edges);
  const counts = { slower: new Float64Array(cells.slower.length), faster: new Float64Array(cells.slower.length) };
  for (let block = 0; block < count; block += every) {
    const [from, to] = [edges[block] as number, edges[block + 1] as number];
    const angles = anglesOf(run, angle, from, to);
    const turns = speedEnds(angles, run.rate);
    const bandOf = (perTurn: number): Band => ({ low: perTurn * factor * turns.low, high: perTurn * factor * turns.high });
    const shown = columns.flatMap(({ perTurn }, j) => (bandOf(perTurn).high < run.limit ? [{ j, perTurn, band: bandOf(perTurn) }] : []));
    const seconds = (to - from) / run.rate;
    const extra = foldedWaves(folded, shown, turns.middle * factor, run.rate, seconds, block);
    const fitted = [...shown.map(({ j, perTurn, band }) => ({ course: courses[j] as MutableCourse, perTurn, band })), ...extra];
    const waves = wavesOf(
      angles,
      fitted.map(({ perTurn }) => perTurn * factor),
    );
    const fits = fitBlock(
      run.readers.map((reader) => {
        const samples = new Float64Array(to - from);
        reader.read(from, samples);
        return samples;
      }),
      waves,
    );
    const bands = fitted.map(({ band }) => band);
    for (const [channel, fit] of fits.entries()) {
      const power = powerOf(fit.residual);
      squares[channel] = (squares[channel] as number) + fit.squares;
      residualSquares[channel] = (residualSquares[channel] as number) + fit.residualSquares;
      for (const [i, { course, band }] of fitted.entries())
        course.blocks[channel]?.push({ amplitude: fit.amplitudes[i] as NoisyBlock["amplitude"], noise: noiseAround(power, band, bands) });
      const half = turns.middle < middle ? "slower" : "faster";
      gather(power, fit.squares / Math.max(1, to - from), cells.spacing, cells[half], counts[half]);
    }
    for (const { course, perTurn } of fitted) {
      course.frequencies.push(perTurn * factor * turns.middle);
      course.places.push(block);
    }
    places.push({ time: (run.readers[0]?.start ?? 0) + (from + to - 1) / 2 / run.rate, turnsPerSecond: turns.middle });
    yield Math.min(1, (block + every) / count);
  }
  for (const half of ["slower", "faster"] as const)
    for (let k = 0; k < cells[half].length; k++) cells[half][k] = (cells[half][k] as number) / Math.max(1, counts[half][k] as number);
  return { columns: courses, folded, places, squares, residualSquares, residual: { ...cells, speedRatio: ratioOfHalves(places, middle) } };
}

/** No narrower than the lines of the shortest block lie apart: a cell between two lines would be empty, and everything stands out of nothing. */
function emptyCells(rate: number, edges: readonly number[]): Omit<ResidualCourse, "speedRatio"> {
  const shortest = Math.min(...edges.slice(1).map((to, i) => to - (edges[i] as number)));
  const count = Math.max(1, Math.min(MOST_CELLS, transformSize(shortest) / 2));
  return { spacing: rate / 2 / count, slower: new Float64Array(count), faster: new Float64Array(count) };
}

function ratioOfHalves(places: readonly BlockPlace[], middle: number): number {
  const mean = (part: readonly BlockPlace[]): number => part.reduce((sum, { turnsPerSecond }) => sum + turnsPerSecond / part.length, 0);
  const [slower, faster] = [places.filter((p) => p.turnsPerSecond < middle), places.filter((p) => p.turnsPerSecond >= middle)];
  return slower.length === 0 || faster.length === 0 ? 1 : mean(faster) / mean(slower);
}

interface Shown {
  readonly j: number;
  readonly perTurn: number;
}
type MutableFold = MutableCourse & { readonly column: FitColumn; readonly hiddenBehind: Map<number, number[]> };

/** Orders above half the rate that stand alone in a block where they fold to; those that lie on a column are noted, those near 0 Hz, half the rate or one another left out. */
function foldedWaves(folded: readonly MutableFold[], shown: readonly Shown[], turns: number, rate: number, seconds: number, block: number) {
  const near = (a: number, b: number): boolean => Math.abs(a - b) * seconds < HIDDEN;
  const taken = [0, rate / 2];
  return folded.flatMap((course) => {
    const at = foldedFrequency(course.column.perTurn * turns, rate);
    const behind = shown.find(({ perTurn }) => near(perTurn * turns, at));
    if (behind) course.hiddenBehind.set(behind.j, [...(course.hiddenBehind.get(behind.j) ?? []), block]);
    if (behind || taken.some((other) => near(other, at))) return [];
    taken.push(at);
    return [{ course, perTurn: course.column.perTurn, band: { low: at, high: at } }];
  });
}

interface MutableCourse {
  readonly blocks: readonly PackedBlocks[];
  readonly frequencies: number[];
  readonly places: number[];
}

const emptyCourse = (channels: number): MutableCourse => ({
  blocks: Array.from({ length: channels }, packedBlocks),
  frequencies: [],
  places: [],
});

/** First sample of each block, and the end: equal turns. */
function blockEdges(run: Run, angle: ShaftAngle, count: number): readonly number[] {
  const { first, count: samples, rate } = run;
  const start = run.readers[0]?.start ?? 0;
  const [begin, end] = [angle.angleAt(start + first / rate), angle.angleAt(start + (first + samples - 1) / rate)];
  return Array.from({ length: count + 1 }, (_, i) => {
    if (i === 0) return first;
    if (i === count) return first + samples;
    return Math.min(first + samples, Math.max(first, Math.round((angle.timeOf(begin + ((end - begin) * i) / count) - start) * rate)));
  });
}

function anglesOf(run: Run, angle: ShaftAngle, from: number, to: number): Float64Array {
  const start = run.readers[0]?.start ?? 0;
  const angles = new Float64Array(to - from);
  for (let n = 0; n < angles.length; n++) angles[n] = angle.angleAt(start + (from + n) / run.rate);
  return angles;
}

/** Turns per second at a block's slowest, fastest and over its whole. */
function speedEnds(angles: Float64Array, rate: number): { readonly low: number; readonly high: number; readonly middle: number } {
  const pieces = 8;
  const last = angles.length - 1;
  let [low, high] = [Number.POSITIVE_INFINITY, 0];
  for (let i = 0; i < pieces; i++) {
    const [a, b] = [Math.floor((i * last) / pieces), Math.floor(((i + 1) * last) / pieces)];
    if (b <= a) continue;
    const speed = (((angles[b] as number) - (angles[a] as number)) / (b - a)) * (rate / (2 * Math.PI));
    low = Math.min(low, speed);
    high = Math.max(high, speed);
  }
  return { low, high, middle: (((angles[last] as number) - (angles[0] as number)) / last) * (rate / (2 * Math.PI)) };
}

/** The middle of the blocks' speeds. Blocks hold equal turns, so that the longer is the slower. */
function medianSpeed(run: Run, angle: ShaftAngle, edges: readonly number[]): number {
  const start = run.readers[0]?.start ?? 0;
  const speeds = edges.slice(1).map((to, i) => {
    const from = edges[i] as number;
    const turned = angle.angleAt(start + (to - 1) / run.rate) - angle.angleAt(start + from / run.rate);
    return (turned / Math.max(1, to - 1 - from)) * (run.rate / (2 * Math.PI));
  });
  const sorted = [...speeds].sort((a, b) => a - b);
  return sorted[sorted.length >> 1] as number;
}

function gather(power: ResidualPower, scale: number, spacing: number, cells: Float64Array, counts: Float64Array): void {
  if (!(scale > 0)) return;
  for (let k = 1; k < power.variance.length; k++) {
    // The rounding of a quotient must not leave a cell empty.
    const cell = Math.min(cells.length - 1, Math.floor((k * power.spacing) / spacing + 1e-9));
    cells[cell] = (cells[cell] as number) + (power.variance[k] as number) / scale;
    counts[cell] = (counts[cell] as number) + 1;
  }
}
