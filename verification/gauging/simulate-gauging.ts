import type { Gauging, Reading } from "@halfturn/engine/gauging";
import type { Driveline } from "@halfturn/engine/kinematics";
import type { Deviates } from "@halfturn/engine/uncertainty";
import { degreesToRadians, type Radians } from "@halfturn/engine/units";
import type { Layout, Spot } from "./layouts.js";

/** What is true under one vehicle: nobody knows it but the simulation. All in radians. */
export interface Truth {
  readonly inclination: Readonly<Record<string, number>>;
  readonly zero: number;
}

const LARGEST_INCLINATION = degreesToRadians(8);
const LARGEST_JOINT_ANGLE = degreesToRadians(5);
const LARGEST_ZERO = degreesToRadians(0.3);

const within = (uniform: Deviates, halfWidth: number): number => halfWidth * (2 * uniform() - 1);

/** Inclinations within 8 deg, from shaft to shaft within 5 deg of one another; a zero within 0.3 deg. */
export function drawTruth(layout: Layout, uniform: Deviates): Truth {
  const inclination: Record<string, number> = {};
  let last = within(uniform, LARGEST_INCLINATION);
  for (const shaft of layout.shafts) {
    const next = Math.max(-LARGEST_INCLINATION, Math.min(LARGEST_INCLINATION, last + within(uniform, LARGEST_JOINT_ANGLE)));
    inclination[shaft] = next;
    last = next;
  }
  return { inclination, zero: within(uniform, LARGEST_ZERO) };
}

/** How one placing goes: adds the accuracy error. `round` is what the display does. */
export interface Placing {
  readonly place: (trueAngle: number) => number;
  readonly round: (angle: number) => number;
}

/** Placings with the true law of errors: rectangular within the accuracy, then rounded to the step of the display. */
export const realPlacing = ({ gauge }: Layout, uniform: Deviates): Placing => ({
  place: (angle) => angle + within(uniform, gauge.accuracy),
  round: (angle) => gauge.resolution * Math.round(angle / gauge.resolution),
});

/** Placings without any error, to see what a slip alone does. */
export const perfectPlacing: Placing = { place: (angle) => angle, round: (angle) => angle };

export const readSpot = (spot: Spot, { inclination, zero }: Truth, { place, round }: Placing): number => {
  const of = (shaft: string): number => inclination[shaft] as number;
  if (spot.kind === "absolute") return round(place(of(spot.shaft) + spot.zeroSign * zero));
  return round(place(of(spot.to)) - place(of(spot.from)));
};

const toReading = (spot: Spot, value: number, k: number): Reading => ({
  ...spot,
  inclination: value as Radians,
  path: `gauging[0].readings[${k}]`,
});

/** Everything read on one visit. `values`: one for each spot of the layout, in radians. */
export function gaugingOf(layout: Layout, values: readonly number[], truth: Truth, placing: Placing, uniform: Deviates): Gauging {
  const zeroCheck = Array.from({ length: layout.zeroChecks }, () => within(uniform, LARGEST_JOINT_ANGLE)).flatMap((slope, pair) =>
    [slope, -slope].map((angle, turn) => ({
      value: placing.round(placing.place(angle + truth.zero)) as Radians,
      path: `gauging[0].gauge.zeroCheck[${2 * pair + turn}]`,
    })),
  );
  return {
    rideHeight: "normal",
    wheels: "on-ground",
    gauge: { ...layout.gauge, zeroCheck },
    readings: layout.spots.map((spot, k) => toReading(spot, values[k] as number, k)),
    headings: [],
    path: "gauging[0]",
  };
}

/** The driveline of a layout: cross joints throughout. */
export const drivelineOf = ({ shafts }: Layout): Driveline => ({
  id: "rear",
  joints: shafts.slice(1).map((_, k) => ({ id: `J${k + 1}`, kind: "cross" })),
  sections: shafts.slice(1, -1).map((id) => ({ id, phasing: 0 as Radians, phasingMeasured: true })),
});
