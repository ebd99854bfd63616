import {
  cubicThrough,
  curveIn,
  integralOf,
  monotoneSlopes,
  type PiecewisePolynomial,
  segmentOf,
  slopeIn,
  valueIn,
} from "./piecewise-polynomial.js";
import { type SignalResult, signalFault, signalValue } from "./signal-fault.js";

/** Where a shaft stands and how fast it turns, over a run. */
export interface ShaftAngle {
  /** First and last time in seconds at which the angle is known. */
  readonly start: number;
  readonly end: number;
  /** Angle turned by the end, rad, from 0 at the start. */
  readonly total: number;
  /** Angle in rad at a time in seconds; outside the run the last speed law goes on. */
  readonly angleAt: (time: number) => number;
  /** Speed in rad/s at a time in seconds. */
  readonly speedAt: (time: number) => number;
  /** Time in seconds at which an angle from 0 to `total` is reached. */
  readonly timeOf: (angle: number) => number;
}

/** A rising angle as a shaft's. */
export function shaftAngleOf(angle: PiecewisePolynomial): ShaftAngle {
  const { knots } = angle;
  const last = knots.length - 1;
  const byTime = rememberingSegment(knots);
  const angleAt = (time: number): number => valueIn(angle, byTime(time), time);
  const reached = Float64Array.from(knots, angleAt);
  const byAngle = rememberingSegment(reached);
  let inverse = inverseOf(angle, reached, 0);
  return {
    start: knots[0] as number,
    end: knots[last] as number,
    total: reached[last] as number,
    angleAt,
    speedAt: (time) => slopeIn(angle, byTime(time), time),
    timeOf: (wanted) => {
      const segment = byAngle(wanted);
      if (inverse.segment !== segment) inverse = inverseOf(angle, reached, segment);
      return crossingIn(angle, segment, wanted, nearlyAt(inverse, wanted));
    },
  };
}

/** segmentOf that looks first where it was last, since who asks goes along a run: the answers are the same, only sooner. */
function rememberingSegment(knots: Float64Array): (x: number) => number {
  let at = 0;
  const most = knots.length - 2;
  const holds = (i: number, x: number): boolean => (i === 0 || (knots[i] as number) <= x) && (i === most || x < (knots[i + 1] as number));
  return (x) => {
    if (holds(at, x)) return at;
    at = at < most && holds(at + 1, x) ? at + 1 : segmentOf(knots, x);
    return at;
  };
}

/** Time against angle in a segment, nearly: the cubic with the right times and slopes at both ends. */
interface SegmentInverse {
  readonly segment: number;
  readonly from: number;
  readonly perAngle: number;
  readonly low: number;
  readonly width: number;
  /** Slopes at the ends over the mean slope, or 1. */
  readonly first: number;
  readonly last: number;
}

function inverseOf(angle: PiecewisePolynomial, reached: Float64Array, segment: number): SegmentInverse {
  const low = angle.knots[segment] as number;
  const high = angle.knots[segment + 1] as number;
  const from = reached[segment] as number;
  const turned = (reached[segment + 1] as number) - from;
  const mean = turned / (high - low);
  const first = mean / slopeIn(angle, segment, low);
  const last = mean / slopeIn(angle, segment, high);
  // Beyond three times the mean the cubic no longer rises all the way (Fritsch and Carlson 1980); the straight line does.
  const rises = first > 0 && first < 3 && last > 0 && last < 3;
  return { segment, from, perAngle: 1 / turned, low, width: high - low, first: rises ? first : 1, last: rises ? last : 1 };
}

function nearlyAt({ from, perAngle, low, width, first, last }: SegmentInverse, wanted: number): number {
  const share = Math.min(1, Math.max(0, (wanted - from) * perAngle));
  return low + width * share * (first + share * (3 - 2 * first - last + share * (first + last - 2)));
}

/** A step of less than so much of a segment: what the curve's own change adds to what is left over no longer counts. */
const NEAR = 1e-5;

/**
 * Newton steps from a time that is nearly right and, where one leaves the bracket, halving: always ends, since every step narrows the bracket. Ends when what a
 * step leaves over, half its square times the curve over the slope, is less than can be told.
 */
function crossingIn(angle: PiecewisePolynomial, segment: number, wanted: number, nearly: number): number {
  let low = angle.knots[segment] as number;
  let high = angle.knots[segment + 1] as number;
  const near = NEAR * (high - low);
  let time = nearly;
  for (let step = 0; step < 60; step++) {
    const value = valueIn(angle, segment, time);
    const slope = slopeIn(angle, segment, time);
    if (value < wanted) low = time;
    else high = time;
    const newton = (wanted - value) / slope;
    const next = time + newton;
    const exact = next >= low && next <= high;
    const inside = exact ? next : (low + high) / 2;
    const told = 4 * Number.EPSILON * Math.abs(time);
    if (Math.abs(inside - time) <= told) return inside;
    if (exact && Math.abs(newton) < near && newton * newton * Math.abs(curveIn(angle, segment, time)) < 2 * told * slope) return inside;
    time = inside;
  }
  return time;
}

/**
 * Angle of a shaft from its speed on a clock of its own. times: seconds, rising; speeds: rad/s, not negative, as many.
 * Between readings the speed follows a monotone cubic, so that no overshoot is invented, and the angle is its exact integral.
 * Faults: signal.lengths-differ, signal.not-finite, shaft-angle.too-few-speeds (under two), shaft-angle.times-not-rising,
 * shaft-angle.standstill where the speed is not above zero: an order has no meaning there.
 */
export function shaftAngleFromSpeeds(times: Float64Array, speeds: Float64Array): SignalResult<ShaftAngle> {
  if (times.length !== speeds.length) return signalFault("signal.lengths-differ", "speeds", { times: times.length, speeds: speeds.length });
  if (times.length < 2) return signalFault("shaft-angle.too-few-speeds", "speeds", { speeds: speeds.length });
  for (const [i, speed] of speeds.entries()) {
    if (!Number.isFinite(speed) || !Number.isFinite(times[i] as number)) return signalFault("signal.not-finite", `speeds[${i}]`);
    if (i > 0 && !((times[i] as number) > (times[i - 1] as number))) return signalFault("shaft-angle.times-not-rising", `times[${i}]`);
    if (speed <= 0) return signalFault("shaft-angle.standstill", `speeds[${i}]`, { time: times[i] as number });
  }
  return signalValue(shaftAngleOf(integralOf(cubicThrough(times, speeds, monotoneSlopes(times, speeds)))));
}
