import type { Radians, RadiansPerSecond, Rpm } from "./brand.js";

const DEGREES_PER_TURN = 360;
const RADIANS_PER_DEGREE = Math.PI / 180;

/** Degrees to radians. Any finite value; the sign is kept. */
export const degreesToRadians = (degrees: number): Radians => (degrees * RADIANS_PER_DEGREE) as Radians;

/** Radians to degrees. Any finite value; the sign is kept. */
export const radiansToDegrees = (angle: Radians): number => angle / RADIANS_PER_DEGREE;

/** Revolutions per minute to radians per second. */
export const rpmToRadiansPerSecond = (speed: Rpm): RadiansPerSecond => ((speed * 2 * Math.PI) / 60) as RadiansPerSecond;

/**
 * Sine of an angle in degrees, exact at every multiple of 90.
 * Range [-1, 1]. Reducing in degrees before converting keeps right angles exact, which `Math.sin(Math.PI)` cannot.
 */
export function sinDegrees(degrees: number): number {
  const quarter = Math.round(degrees / 90);
  const rest = degreesToRadians(degrees - quarter * 90);
  switch (((quarter % 4) + 4) % 4) {
    case 0:
      return Math.sin(rest);
    case 1:
      return Math.cos(rest);
    case 2:
      return -Math.sin(rest);
    default:
      return -Math.cos(rest);
  }
}

/** Cosine of an angle in degrees, exact at every multiple of 90. Range [-1, 1]. */
export const cosDegrees = (degrees: number): number => sinDegrees(90 - degrees);

/** The angle in degrees brought into (-half, half] for a period of 2 x half: 180 for a full turn, 90 for a shaft phasing. */
export function wrapDegrees(degrees: number, half: 90 | 180 = (DEGREES_PER_TURN / 2) as 180): number {
  const period = 2 * half;
  const wrapped = degrees - period * Math.ceil((degrees - half) / period);
  return wrapped === 0 ? 0 : wrapped;
}
