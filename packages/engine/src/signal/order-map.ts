import { splinePlaces } from "./cubic-spline.js";
import { decimated, type Passing } from "./decimation.js";
import { realFft, transformSize } from "./real-fft.js";
import type { SampleReader } from "./sample-reader.js";
import type { ShaftAngle } from "./shaft-angle.js";
import { type SignalResult, signalFault, signalValue } from "./signal-fault.js";
import { type WindowName, windowSamples, windowSums } from "./window.js";

/** What is to be mapped. */
export interface OrderMapSettings {
  /** Turns of the shaft in a block: orders 4/turns apart (Hann) stand apart. */
  readonly turns: number;
  /** Up to which order. */
  readonly highestOrder: number;
  readonly window?: WindowName;
  /** Share of a block that the next repeats; half when left out. */
  readonly overlap?: number;
  /** Rows at most: beyond them neighbouring blocks are averaged into one. */
  readonly rows?: number;
  /** Lines per 1/turns, a power of two that draws the lines closer; 1 when left out. */
  readonly fineness?: number;
}

/** Vibration over order and time, or speed. */
export interface OrderMap {
  /** Middle of each row, seconds. */
  readonly times: Float64Array;
  /** Mean speed of the shaft in each row, rad/s. */
  readonly speeds: Float64Array;
  /** Line k lies at order k times this. */
  readonly orderSpacing: number;
  readonly lines: number;
  /** Mean square of a tone, u^2 (A^2/2 for an amplitude A), row by row: row i, line k at i lines + k. */
  readonly meanSquare: Float64Array;
}

/**
 * Thinned out no further than to so many samples to the period of the highest frequency. A cubic spline then keeps 99.9 % of its amplitude, and of slower ones more:
 * with w radians between two samples it keeps (sin(w/2) / (w/2))^4 / ((2 + cos w) / 3) (M. Unser, IEEE Signal Process. Mag. 16(6), 22-38, 1999).
 */
const SAMPLES_PER_PERIOD = 7;
/** Samples at either end of a block that the spline's ends may bend. */
const MARGIN = 12;
/** No more samples per turn than this, however slow the shaft turns at times. */
const MOST_PER_TURN = 4096;

/** The whole map at once; see orderMapSteps. */
export function orderMap(reader: SampleReader, angle: ShaftAngle, settings: OrderMapSettings): SignalResult<OrderMap> {
  const steps = orderMapSteps(reader, angle, settings);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

/** One reader's map in steps; see orderMapsSteps. */
export function* orderMapSteps(
  reader: SampleReader,
  angle: ShaftAngle,
  settings: OrderMapSettings,
): Generator<number, SignalResult<OrderMap>> {
  const maps = yield* orderMapsSteps([reader], angle, settings);
  return maps.ok ? signalValue(maps.value[0] as OrderMap) : maps;
}

/**
 * Spectra over blocks of whole turns of a shaft, against order (computed order tracking), of one or more readers of the same rate, start and length: yields the
 * share done after each block. Reads block by block and holds one block and the maps.
 * Faults: signal.bad-rate, order-tracking.no-whole-turns where not one block fits.
 * Source: K. R. Fyfe and E. D. S. Munck, Mech. Syst. Signal Process. 11(2), 187-205, 1997.
 */
export function* orderMapsSteps(
  full: readonly SampleReader[],
  angle: ShaftAngle,
  settings: OrderMapSettings,
): Generator<number, SignalResult<readonly OrderMap[]>> {
  const { turns, highestOrder, window = "hann", overlap = 0.5, rows = Number.POSITIVE_INFINITY, fineness = 1 } = settings;
  if (!(turns > 0 && highestOrder > 0 && overlap >= 0 && overlap < 1)) throw new RangeError("turns and order above zero, overlap below 1");
  const [{ rate } = { rate: 0 }] = full;
  if (!(rate > 0 && Number.isFinite(rate))) return signalFault("signal.bad-rate", "rate", { rate });
  const { factor, passing, perTurn } = thinningFor(rate, speedEnds(angle), highestOrder);
  const readers = full.map((reader) => decimated(reader, factor, passing));
  const [first] = readers as [SampleReader, ...SampleReader[]];
  const length = Math.round(turns * perTurn);
  const size = transformSize(length) * fineness;
  const [from, to] = commonRange(first, angle);
  const [begin, end] = to > from ? [angle.angleAt(from), angle.angleAt(to)] : [0, 0];
  const step = (2 * Math.PI) / perTurn;
  // Whole samples, so that what a block repeats of the last need not be made anew.
  const hop = Math.max(1, Math.round((1 - overlap) * length));
  const count = Math.floor((end - begin - length * step) / (hop * step) + 1 + 1e-9);
  if (!(count >= 1)) return signalFault("order-tracking.no-whole-turns", "samples", { from, to });
  const group = Math.max(1, Math.ceil(count / rows));
  const lines = Math.min(size / 2, Math.floor((highestOrder * size) / perTurn)) + 1;
  const maps = readers.map(() => emptyMap(Math.ceil(count / group), lines, perTurn / size));
  const shape = windowSamples(window, length);
  const scale = 2 / windowSums(shape).sum ** 2;
  const fft = realFft(size, lines);
  const times = new Float64Array(length + 1);
  const signals = readers.map(() => new Float64Array(length));
  const sample = sampler(readers);
  const block = new Float64Array(length);
  for (let i = 0; i < count; i++) {
    const kept = i === 0 ? 0 : Math.max(0, length - hop);
    if (kept > 0) times.copyWithin(0, hop);
    timesAlong(angle, begin + (i * hop + kept) * step, step, times.subarray(kept));
    const [start, stop] = [times[0] as number, times[length] as number];
    const row = Math.floor(i / group);
    const share = 1 / Math.min(group, count - row * group);
    if (kept > 0) for (const samples of signals) samples.copyWithin(0, hop);
    sample(
      times.subarray(kept, length),
      signals.map((samples) => samples.subarray(kept)),
    );
    for (const [m, samples] of signals.entries()) {
      const map = maps[m] as OrderMap;
      weigh(samples, shape, block);
      const { re, im } = fft(block);
      map.times[row] = (map.times[row] as number) + (share * (start + stop)) / 2;
      map.speeds[row] = (map.speeds[row] as number) + (share * length * step) / (stop - start);
      addPower(re, im, share * scale, map.meanSquare.subarray(row * lines, (row + 1) * lines));
    }
    yield (i + 1) / count;
  }
  return signalValue(maps);
}

const emptyMap = (rows: number, lines: number, orderSpacing: number): OrderMap => ({
  times: new Float64Array(rows),
  speeds: new Float64Array(rows),
  orderSpacing,
  lines,
  meanSquare: new Float64Array(rows * lines),
});

/** Slowest and fastest, turns per second. */
interface SpeedEnds {
  readonly slowest: number;
  readonly fastest: number;
}

function speedEnds(angle: ShaftAngle): SpeedEnds {
  let [slowest, fastest] = [Number.POSITIVE_INFINITY, 0];
  for (let place = 0; place <= 1000; place++) {
    const speed = angle.speedAt(angle.start + ((angle.end - angle.start) * place) / 1000) / (2 * Math.PI);
    slowest = Math.min(slowest, speed);
    fastest = Math.max(fastest, speed);
  }
  return { slowest, fastest };
}

/** How a recording is thinned out, and how many samples of a turn are then made of it. */
interface Thinning {
  readonly factor: number;
  readonly passing: Passing;
  readonly perTurn: number;
}

/**
 * As few samples per turn as let nothing fold below the highest order where the shaft turns slowest: at a steady speed the filter takes away what would, where that
 * leaves its transition as wide as what it keeps; else the samples must hold all that is left at the thinned rate.
 */
function thinningFor(rate: number, { slowest, fastest }: SpeedEnds, highestOrder: number): Thinning {
  const pass = highestOrder * fastest;
  const factor = Math.max(1, Math.floor(rate / (SAMPLES_PER_PERIOD * pass)));
  const thinned = rate / factor;
  const enough = factor === 1 ? thinned / 2 : Math.min(thinned / 2, 2 * pass);
  let perTurn = transformSize(2.56 * highestOrder);
  const held = (): number => (perTurn - highestOrder) * slowest;
  while (perTurn < MOST_PER_TURN && held() < enough) perTurn *= 2;
  const stop = held() < thinned / 2 ? Math.max(held(), 2 * pass) : thinned - pass;
  return { factor, passing: { pass, stop }, perTurn };
}

function commonRange(reader: SampleReader, angle: ShaftAngle): readonly [number, number] {
  const margin = MARGIN / reader.rate;
  return [Math.max(reader.start + margin, angle.start), Math.min(reader.start + (reader.length - 1) / reader.rate - margin, angle.end)];
}

// The loops over samples stand apart, since within a generator they would run many times slower.

/** When the shaft reaches `from`, rad, and the steps after it. */
function timesAlong(angle: ShaftAngle, from: number, step: number, out: Float64Array): void {
  for (let n = 0; n < out.length; n++) out[n] = angle.timeOf(from + n * step);
}

/** Adds mean squares of tones; the constant's is half as much by the same transform. */
function addPower(re: Float64Array, im: Float64Array, scale: number, sums: Float64Array): void {
  for (let k = 0; k < sums.length; k++) {
    const x = re[k] as number;
    const y = im[k] as number;
    sums[k] = (sums[k] as number) + (k === 0 ? scale / 2 : scale) * (x * x + y * y);
  }
}

/** Fills each of `outs` with the signal of its reader, all of the same rate and start, at as many rising times. */
function sampler(readers: readonly SampleReader[]): (times: Float64Array, outs: readonly Float64Array[]) => void {
  const [{ start, rate, length }] = readers as [SampleReader, ...SampleReader[]];
  const spline = splinePlaces();
  let room = new Float64Array(0);
  return (times, outs) => {
    const count = times.length;
    const placeOf = (n: number): number => ((times[n] as number) - start) * rate;
    const from = Math.max(0, Math.floor(placeOf(0)) - MARGIN);
    const to = Math.min(length, Math.ceil(placeOf(count - 1)) + MARGIN + 1);
    if (room.length < count + to - from) room = new Float64Array(count + to - from);
    const places = room.subarray(0, count);
    const piece = room.subarray(count, count + to - from);
    for (let n = 0; n < count; n++) places[n] = placeOf(n) - from;
    spline.set(places, piece.length);
    for (const [m, reader] of readers.entries()) {
      reader.read(from, piece);
      spline.read(piece, outs[m] as Float64Array);
    }
  };
}

/** The samples without their mean, under the window. */
function weigh(samples: Float64Array, shape: Float64Array, out: Float64Array): void {
  let sum = 0;
  for (let n = 0; n < samples.length; n++) sum += samples[n] as number;
  const mean = sum / samples.length;
  for (let n = 0; n < out.length; n++) out[n] = ((samples[n] as number) - mean) * (shape[n] as number);
}
