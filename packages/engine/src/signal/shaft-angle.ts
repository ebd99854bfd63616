import { cubicThrough, evaluateSegment, integralOf, monotoneSlopes, type PiecewisePolynomial, segmentOf } from "./piecewise-polynomial.js";
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
  const angleAt = (time: number): number => evaluateSegment(angle, byTime(time), time).value;
  const reached = Float64Array.from(knots, angleAt);
  const byAngle = rememberingSegment(reached);
  return {
    start: knots[0] as number,
    end: knots[last] as number,
    total: reached[last] as number,
    angleAt,
    speedAt: (time) => evaluateSegment(angle, byTime(time), time).slope,
    timeOf: (wanted) => {
      const segment = byAngle(wanted);
      return crossingIn(angle, segment, wanted, reached);
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

/** Newton steps and, where one leaves the bracket, halving: always ends, since every step narrows the bracket. */
function crossingIn(angle: PiecewisePolynomial, segment: number, wanted: number, reached: Float64Array): number {
  let low = angle.knots[segment] as number;
  let high = angle.knots[segment + 1] as number;
  const [from, to] = [reached[segment] as number, reached[segment + 1] as number];
  let time = low + (high - low) * Math.min(1, Math.max(0, (wanted - from) / (to - from)));
  for (let step = 0; step < 60; step++) {
    const { value, slope } = evaluateSegment(angle, segment, time);
    if (value < wanted) low = time;
    else high = time;
    const next = time + (wanted - value) / slope;
    const inside = next >= low && next <= high ? next : (low + high) / 2;
    if (Math.abs(inside - time) <= 4 * Number.EPSILON * Math.abs(time)) return inside;
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
