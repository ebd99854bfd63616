import { cosDegrees, degreesToRadians, type Radians, radiansToDegrees, sinDegrees } from "@halfturn/engine/units";

/** Where up is, by the phone's own axes: x to the right of the screen held upright, y to its top, z out of it. A unit vector. */
export interface UpVector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/**
 * Up from the two tilts that a browser gives, in degrees. The alpha turn about the vertical does not matter.
 * Source: W3C, DeviceOrientation Event Specification, worked example of the rotation matrix Z-X'-Y'': up is its third row.
 */
export const upOf = (betaDeg: number, gammaDeg: number): UpVector => ({
  x: -cosDegrees(betaDeg) * sinDegrees(gammaDeg),
  y: sinDegrees(betaDeg),
  z: cosDegrees(betaDeg) * cosDegrees(gammaDeg),
});

/**
 * Elevation of one axis above the horizontal by all three axes, so that how the phone is rolled about that axis does not matter; the form that leaves an axis out is wrong as soon as
 * the phone is rolled. Source: NXP AN3461 (Pedley), equation for the pitch from three axes (from memory).
 */
const elevation = (along: number, across: number, out: number): Radians => Math.atan2(along, Math.hypot(across, out)) as Radians;

/** along: a long edge of the phone lies on the shaft. across: a long edge stands against a square face. */
export type PhonePose = "along" | "across";

/** Slope in degrees with the screen facing the reader, positive where the reader's right is lower; or how the phone should be held instead. */
export type PhoneReading =
  | { readonly ok: true; readonly slopeDeg: number }
  | { readonly ok: false; readonly fault: "lying-flat" | "not-on-edge" };

/** Out of the screen may lean this far from level; beyond it the phone lies more than it stands. */
const MOST_OUT = Math.sin(degreesToRadians(45));
/** The edge has to run within this of the way it should. */
const MOST_ALONG = Math.sin(degreesToRadians(30));

export function phoneReading(up: UpVector, pose: PhonePose): PhoneReading {
  if (Math.abs(up.z) > MOST_OUT) return { ok: false, fault: "lying-flat" };
  const [along, standing] = pose === "along" ? [up.y, up.x] : [up.x, up.y];
  if (Math.abs(along) > MOST_ALONG) return { ok: false, fault: "not-on-edge" };
  const rises = radiansToDegrees(elevation(along, standing, up.z));
  // On its long edge with x up, the top of the phone points to the reader's left; upright, x points to the right.
  const isRightward = pose === "along" ? standing < 0 : standing > 0;
  return { ok: true, slopeDeg: isRightward ? -rises : rises };
}

export interface TimedSlope {
  readonly atMs: number;
  readonly slopeDeg: number;
}

/** A hand that still moves shows within this time. */
const WHILE_MS = 800;

/** The readings of the last while, and the one that stood when it began: a phone that lies still may send nothing new. */
export function recentSlopes(readings: readonly TimedSlope[], nowMs: number): readonly TimedSlope[] {
  const first = readings.findIndex(({ atMs }) => atMs > nowMs - WHILE_MS);
  return readings.slice(first < 0 ? -1 : Math.max(0, first - 1));
}

/** The middle of readings over a while and half of how far they spread, in degrees. */
export function steadied(readings: readonly TimedSlope[]): { readonly slopeDeg: number; readonly spreadDeg: number } | null {
  if (readings.length === 0) return null;
  const slopes = readings.map(({ slopeDeg }) => slopeDeg);
  const mean = slopes.reduce((sum, slope) => sum + slope, 0) / slopes.length;
  return { slopeDeg: mean, spreadDeg: (Math.max(...slopes) - Math.min(...slopes)) / 2 };
}

/** A slope as a display of one decimal would show it: its size, in tenths of a degree. */
export const displayed = (slopeDeg: number): number => Math.round(Math.abs(slopeDeg) * 10) / 10;
