import { type OrderMap, orderMapsSteps } from "../signal/order-map.js";
import { followRidge, overNoise } from "../signal/ridge.js";
import { type ShaftAngle, shaftAngleFromSpeeds } from "../signal/shaft-angle.js";
import { presence } from "./cause-probabilities.js";
import type { ReferenceShaft } from "./input.js";
import { lockPhase } from "./lock-phase.js";
import type { Run } from "./run.js";
import { scaledSteps } from "./scaled-steps.js";

/** One way to read a recording whose speed is known loosely only: every order lies at `scale` times its place. */
export interface Reading {
  readonly scale: number;
  /** How probable; all readings of a run add up to 1. */
  readonly weight: number;
}

/** A speed set right by the vibration itself. */
export interface FollowedSpeed {
  readonly angle: ShaftAngle;
  readonly readings: readonly Reading[];
}

/** Turns of the wheel in a block of the map, and lines of the map per turn of them. */
const TURNS = 16;
const FINENESS = 4;
/** Lines to either side that tell the noise. */
const AROUND = 14 * FINENESS;
/** What stands out by so much is a line (natural logarithm of the odds). */
const CLEAR = 6;
/** No single line counts for more: what one line says about the scale, it has said. */
const MOST_SAID = 30;
/** Readings less probable than this are left out; at most so many are followed up. */
const UNLIKELY = 0.02;
const MOST_READINGS = 4;

/**
 * Follows the clearest line near an order through the run, sets the speed right by it, and finds by what factor the log is off: each factor that puts clear
 * lines onto orders is a reading, the more probable the more lines it explains. Where nothing is clear the log stands.
 */
export function* followSpeed(run: Run, reference: ReferenceShaft): Generator<number, FollowedSpeed> {
  const { looseness, perWheelTurn } = reference;
  const orders = run.lines.filter(({ observable }) => observable).map(({ perTurn }) => perTurn);
  const first = yield* scaledSteps(mapOf(run, reference.angle, perWheelTurn, orders, looseness), 0, 0.4);
  if (first === null) return { angle: reference.angle, readings: [{ scale: 1, weight: 1 }] };
  const [leader] = peaksNear(first, orders, looseness);
  const angle = leader === undefined ? reference.angle : straightened(first, leader.order, looseness, reference.angle);
  const locked = leader && (yield* scaledSteps(lockPhase(run.readers, angle, leader.order, perWheelTurn), 0.4, 0.2));
  const set = locked ?? angle;
  const second = leader && (yield* scaledSteps(mapOf(run, set, perWheelTurn, orders, looseness), 0.6, 0.4));
  const last = second ?? first;
  return { angle: set, readings: readingsOf(peaksNear(last, orders, looseness), orders, looseness, resolution(last)) };
}

interface WhitenedMap {
  readonly map: OrderMap;
  /** Power over noise, as the map's rows and lines; mean of the channels. */
  readonly rows: readonly Float64Array[];
  /** Mean of the rows. */
  readonly mean: Float64Array;
  readonly channels: number;
}

const resolution = ({ map }: WhitenedMap): number => map.orderSpacing * FINENESS;

/** Share of the work that is the map itself. */
const MAPPED = 0.8;

function* mapOf(
  run: Run,
  angle: ShaftAngle,
  perWheelTurn: number,
  orders: readonly number[],
  looseness: number,
): Generator<number, WhitenedMap | null> {
  const highestOrder = Math.max(...orders) * (1 + looseness) + 2 / perWheelTurn;
  const settings = { turns: Math.max(1, Math.round(TURNS * perWheelTurn)), highestOrder, fineness: FINENESS };
  const found = yield* scaledSteps(orderMapsSteps(run.readers, angle, settings), 0, MAPPED);
  if (!found.ok) return null;
  const maps = found.value;
  const [map] = maps as [OrderMap, ...OrderMap[]];
  const rows: Float64Array[] = [];
  for (let row = 0; row < map.times.length; row++) {
    const sum = new Float64Array(map.lines);
    for (const { meanSquare, lines } of maps) {
      const ratio = overNoise(meanSquare.slice(row * lines, (row + 1) * lines), AROUND);
      for (let k = 0; k < lines; k++) sum[k] = (sum[k] as number) + (ratio[k] as number) / maps.length;
    }
    rows.push(sum);
    if (row % 16 === 0) yield MAPPED + ((1 - MAPPED) * row) / map.times.length;
  }
  const mean = new Float64Array(map.lines);
  for (const row of rows) for (let k = 0; k < mean.length; k++) mean[k] = (mean[k] as number) + (row[k] as number) / rows.length;
  return { map, rows, mean, channels: maps.length };
}

interface Peak {
  readonly order: number;
  /** Logarithm of the odds that it is a line. */
  readonly clearness: number;
}

/** Half-overlapping Hann blocks are worth so much of independent ones (P. D. Welch, IEEE Trans. Audio Electroacoust. 15(2), 1967: 11/18 of the blocks). */
const WORTH = 11 / 18;
/** A noise that is the median of so many lines is known about as well as this. */
const NOISE_FREEDOM = 20;

/** Clear peaks that an order within the looseness could be, the clearest first. */
function peaksNear({ map, mean, rows, channels }: WhitenedMap, orders: readonly number[], looseness: number): readonly Peak[] {
  const blocks = Math.max(1, rows.length * channels * WORTH);
  const clearnessAt = (k: number): number =>
    presence({ noiseUnits: 2 * blocks * (mean[k] as number), blocks, freedom: NOISE_FREEDOM * Math.max(1, rows.length / 2) });
  const peaks: Peak[] = [];
  for (let k = 2; k < mean.length - 2; k++) {
    const [left, middle, right] = [mean[k - 1] as number, mean[k] as number, mean[k + 1] as number];
    if (!(middle > left && middle >= right)) continue;
    const order = (k + (right - left) / (2 * (2 * middle - left - right))) * map.orderSpacing;
    const clearness = clearnessAt(k);
    if (clearness > CLEAR && orders.some((own) => Math.abs(order / own - 1) <= looseness + map.orderSpacing / own))
      peaks.push({ order, clearness });
  }
  return mainOnes(
    peaks.sort((a, b) => b.clearness - a.clearness),
    map.orderSpacing * FINENESS * 2,
  );
}

/** Without the side lobes of stronger ones: peaks within a main lobe of a stronger one. */
function mainOnes(peaks: readonly Peak[], lobe: number): readonly Peak[] {
  const kept: Peak[] = [];
  for (const peak of peaks) if (kept.every(({ order }) => Math.abs(order - peak.order) > lobe)) kept.push(peak);
  return kept;
}

/** An angle corrected so that the leader stays at one order. */
function straightened({ map, rows }: WhitenedMap, leader: number, looseness: number, angle: ShaftAngle): ShaftAngle {
  const middle = Math.round(leader / map.orderSpacing);
  const half = Math.min(middle - 1, Math.ceil((looseness * leader) / map.orderSpacing) + FINENESS);
  const states = 2 * half + 1;
  const scores = new Float64Array(rows.length * states);
  for (const [i, row] of rows.entries())
    for (let s = 0; s < states; s++) scores[i * states + s] = Math.log(Math.max(0.5, row[middle - half + s] ?? 0.5));
  const path = followRidge(scores, states, Math.max(2, Math.ceil(half / 4)), 2).states;
  const factors = path.map((state) => ((middle - half + state) * map.orderSpacing) / leader);
  const times = Float64Array.of(angle.start, ...map.times, angle.end);
  const ratios = Float64Array.of(factors[0] as number, ...factors, factors.at(-1) as number);
  return corrected(angle, times, ratios) ?? angle;
}

/** Readings per row of the map at which the corrected speed is written down. */
const KNOTS = 8;

/** The angle's speed times ratios given at times, straight between them. */
function corrected(angle: ShaftAngle, times: Float64Array, ratios: Float64Array): ShaftAngle | null {
  const knots: number[] = [];
  const speeds: number[] = [];
  for (let i = 0; i + 1 < times.length; i++) {
    const [from, to] = [times[i] as number, times[i + 1] as number];
    if (!(to > from)) continue;
    for (let j = 0; j < KNOTS; j++) {
      const share = j / KNOTS;
      const time = from + (to - from) * share;
      knots.push(time);
      speeds.push(angle.speedAt(time) * ((ratios[i] as number) * (1 - share) + (ratios[i + 1] as number) * share));
    }
  }
  knots.push(angle.end);
  speeds.push(angle.speedAt(angle.end) * (ratios.at(-1) as number));
  const result = shaftAngleFromSpeeds(Float64Array.from(knots), Float64Array.from(speeds));
  return result.ok ? result.value : null;
}

function readingsOf(peaks: readonly Peak[], orders: readonly number[], looseness: number, line: number): readonly Reading[] {
  const tolerance = (order: number): number => line / 4 + 0.001 * order;
  const within = (scale: number): boolean => Math.abs(scale - 1) <= looseness + line / Math.max(...orders);
  const candidates = peaks.slice(0, 6).flatMap((peak) => orders.map((own) => peak.order / own).filter(within));
  const said = (scale: number): number =>
    peaks.reduce((sum, { order, clearness }) => {
      const explained = orders.some((own) => Math.abs(own * scale - order) <= tolerance(order));
      return explained ? sum + Math.min(MOST_SAID, clearness) : sum;
    }, 0);
  const scored = candidates
    .map((scale) => ({ scale, log: said(scale) }))
    .sort((a, b) => b.log - a.log || Math.abs(a.scale - 1) - Math.abs(b.scale - 1));
  const distinct: { scale: number; log: number }[] = [];
  for (const one of scored)
    if (distinct.every(({ scale }) => Math.abs(scale - one.scale) > line / 2 / Math.max(...orders))) distinct.push(one);
  const [best] = distinct;
  if (best === undefined) return [{ scale: 1, weight: 1 }];
  const weighed = distinct.map(({ scale, log }) => ({ scale, weight: Math.exp(log - best.log) })).slice(0, MOST_READINGS);
  const likely = weighed.filter(({ weight }) => weight > UNLIKELY);
  const total = likely.reduce((sum, { weight }) => sum + weight, 0);
  return likely.map(({ scale, weight }) => ({ scale, weight: weight / total }));
}
