import { cubicThrough, parabolicSlopes } from "./piecewise-polynomial.js";
import { type ShaftAngle, shaftAngleOf } from "./shaft-angle.js";

/**
 * A shaft's angle through known angles (rad, rising) at known times (seconds, rising), three or more: the speed at each is that of the quadratic through it and
 * its neighbours, held within what keeps the angle rising (Fritsch and Carlson 1980): 0 to three times the smaller secant beside.
 */
export function angleThrough(times: Float64Array, angles: Float64Array): ShaftAngle {
  const last = times.length - 1;
  const secant = (i: number): number =>
    ((angles[i + 1] as number) - (angles[i] as number)) / ((times[i + 1] as number) - (times[i] as number));
  const slopes = parabolicSlopes(times, angles).map((slope, i) =>
    Math.min(Math.max(slope, 0), 3 * Math.min(secant(Math.max(0, i - 1)), secant(Math.min(last - 1, i)))),
  );
  return shaftAngleOf(cubicThrough(times, angles, slopes));
}
