import type { Gauging, Reading } from "@halfturn/engine/gauging";
import type { Driveline } from "@halfturn/engine/kinematics";
import { degreesToRadians, metres } from "@halfturn/engine/units";

/** A two-piece shaft with a support bearing: three cross joints, the front section a quarter turn out, nothing in one plane. */
export const threeJoints: Driveline = {
  id: "rear",
  joints: ["J1", "J2", "J3"].map((id) => ({ id, kind: "cross" })),
  sections: [
    { id: "front", phasing: degreesToRadians(90), phasingMeasured: true },
    { id: "back", phasing: degreesToRadians(0), phasingMeasured: true },
  ],
};

const reading = (shaft: string, deg: number, place: "along" | "source-end" | "driven-end"): Reading => ({
  kind: "absolute",
  shaft,
  place,
  inclination: degreesToRadians(deg),
  zeroSign: 1,
  path: `gauging[0].readings[${shaft}]`,
});

/** A gauging of it as it is usually done: both ends of every tube, a turn-round check, one heading. */
export const threeJointGauging: Gauging = {
  rideHeight: "normal",
  wheels: "on-ground",
  gauge: {
    resolution: degreesToRadians(0.1),
    accuracy: degreesToRadians(0.1),
    common: false,
    zeroCheck: [
      { value: degreesToRadians(0.3), path: "gauging[0].gauge.zeroCheck[0]" },
      { value: degreesToRadians(-0.3), path: "gauging[0].gauge.zeroCheck[1]" },
    ],
  },
  readings: [
    reading("source", 2.4, "along"),
    reading("front", 5.6, "source-end"),
    reading("front", 5.6, "driven-end"),
    reading("back", 5.1, "source-end"),
    reading("back", 5.1, "driven-end"),
    reading("driven", 2.1, "along"),
  ],
  headings: [
    { kind: "offset", shaft: "front", lateral: metres(0.012), over: metres(1.18), accuracy: metres(0.002), path: "gauging[0].headings[0]" },
  ],
  path: "gauging[0]",
};
