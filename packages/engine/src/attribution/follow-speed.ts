import { followRidge } from "../signal/ridge.js";
import { type ShaftAngle, shaftAngleFromSpeeds } from "../signal/shaft-angle.js";
import { scaledSteps } from "../uncertainty/index.js";
import type { ReferenceShaft } from "./input.js";
import { lockPhase } from "./lock-phase.js";
import type { OrderLine } from "./order-lines.js";
import { FINENESS, type Peak, peaksNear, resolution, type WhitenedMap, whitenedMap } from "./peaks.js";
import type { Run } from "./run.js";

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

/** No single line counts for more: what one line says about the scale, it has said. */
const MOST_SAID = 30;
/** Readings less probable than this are left out; at most so many are followed up. */
const UNLIKELY = 0.02;
const MOST_READINGS = 4;

/**
 * Follows the clearest line near an order through the run, sets the speed right by it, and finds by what factor the log is off: each factor that puts clear
 * lines onto orders is a reading, the more probable the more lines it explains. Where nothing is clear the log stands. geared: whether a line keeps its place.
 */
export function* followSpeed(run: Run, reference: ReferenceShaft, geared: (line: OrderLine) => boolean): Generator<number, FollowedSpeed> {
  const { looseness, perWheelTurn, wander = looseness } = reference;
  const orders = run.lines.filter((line) => line.observable && geared(line)).map(({ perTurn }) => perTurn);
  if (orders.length === 0) return { angle: reference.angle, readings: [{ scale: 1, weight: 1 }] };
  const first = yield* scaledSteps(whitenedMap(run, reference.angle, perWheelTurn, orders, looseness), 0, 0.4);
  if (first === null) return { angle: reference.angle, readings: [{ scale: 1, weight: 1 }] };
  const [leader] = peaksNear(first, orders, looseness);
  const angle = leader === undefined ? reference.angle : straightened(first, leader.order, wander, reference.angle);
  const locked = leader && (yield* scaledSteps(lockPhase(run.readers, angle, leader.order, perWheelTurn), 0.4, 0.2));
  const set = locked ?? angle;
  const second = leader && (yield* scaledSteps(whitenedMap(run, set, perWheelTurn, orders, looseness), 0.6, 0.4));
  const last = second ?? first;
  return { angle: set, readings: readingsOf(peaksNear(last, orders, looseness), orders, looseness, resolution(last)) };
}

/** An angle corrected so that the leader stays at one order. */
function straightened({ map, rows }: WhitenedMap, leader: number, wander: number, angle: ShaftAngle): ShaftAngle {
  const middle = Math.round(leader / map.orderSpacing);
  const half = Math.min(middle - 1, Math.ceil((wander * leader) / map.orderSpacing) + FINENESS);
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
  // The clearest line is the one that was followed: it says where it lies far better than the vote does, and a block loses its amplitude where it lies beside its order.
  const settled = (scale: number): number => {
    for (const { order } of peaks) {
      const own = orders.find((one) => Math.abs(one * scale - order) <= tolerance(order));
      if (own !== undefined) return order / own;
    }
    return scale;
  };
  const scored = candidates
    .map((scale) => ({ scale: settled(scale), log: said(scale) }))
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
