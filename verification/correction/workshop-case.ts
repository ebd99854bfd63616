import { type CorrectionInput, DEFAULT_ACCURACY } from "@halfturn/engine/correction";
import type { ErrorSource, PoseModel } from "@halfturn/engine/gauging";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { degreesToRadians, metres, type Radians, rpm } from "@halfturn/engine/units";
import type { RigidVehicle } from "./rigid-vehicle.js";

/** Half widths of the errors with which this workshop measures: gauge and heading in radians, tape in metres. */
export const WORKSHOP = { gauge: degreesToRadians(0.15), heading: degreesToRadians(0.3), tape: DEFAULT_ACCURACY.tape };

/** The tape measures of the vehicle that the checks correct. */
export const BUILD = {
  lengths: [1.18, 1.24],
  bearing: 0.12,
  arm: 0.33,
  above: 0.02,
  pivot: [1.35, 0, -0.06],
  mount: [0.25, 0, -0.18],
} as const;

/** It stands with joint angles of 2.2, 3 and 4.1 degrees: near several limits, so that every choice has a probability of its own. */
export const NEAR_LIMITS: RigidVehicle = { inclination: [0.4, 2.6, 5.6, 1.5].map(degreesToRadians), heading: [0, 0, 0, 0], ...BUILD };

const SHAFTS = ["source", "front", "back", "driven"] as const;

/** Poses as a gauging gives them, one independent rectangular error a shaft and angle. */
function posesOf({ inclination, heading }: RigidVehicle): PoseModel {
  const source = (of: string, halfWidth: number): ErrorSource => ({
    of,
    path: `gauging[0].${of}`,
    shape: "rectangular",
    u: halfWidth / Math.sqrt(3),
    origin: "measured",
  });
  const sources = [...SHAFTS.map((id) => source(id, WORKSHOP.gauge)), ...SHAFTS.map((id) => source(`heading:${id}`, WORKSHOP.heading))];
  const unit = (at: number): readonly number[] => sources.map((_, k) => (k === at ? 1 : 0));
  return {
    shafts: SHAFTS,
    inclination: inclination.map((angle) => angle as Radians),
    heading: heading.map((angle) => angle as Radians),
    sources,
    inclinationBy: SHAFTS.map((_, s) => unit(s)),
    headingBy: SHAFTS.map((_, s) => unit(4 + s)),
    findings: [],
  };
}

/** The case that the workshop would hold of such a vehicle, with a wedge, a support spacer and a mount spacer to choose from. */
export function workshopCase(vehicle: RigidVehicle, seed: number, draws: number): CorrectionInput {
  const limits = {
    ...DEFAULT_LIMITS,
    // Headings of a tenth of a degree would otherwise trip the needle limit of a nearly straight joint.
    minimumAngle: { ...DEFAULT_LIMITS.minimumAngle, cross: { value: 0 as Radians, source: "set aside here" } },
  };
  const common = { labour: 1, parts: 0, drivelineId: "rear" };
  return {
    drivelines: [
      {
        driveline: {
          id: "rear",
          joints: ["J1", "J2", "J3"].map((id) => ({ id, kind: "cross" as const })),
          sections: [
            { id: "front", phasing: (Math.PI / 2) as Radians, phasingMeasured: true, length: metres(vehicle.lengths[0]) },
            { id: "back", phasing: 0 as Radians, phasingMeasured: true, length: metres(vehicle.lengths[1]) },
          ],
        },
        runs: "rearward",
        poses: posesOf(vehicle),
        supports: [{ jointId: "J2", bearingToJoint: metres(vehicle.bearing), bearingIs: "source-side", mounted: "below-crossmember" }],
        slips: [{ sectionId: "back", engaged: metres(0.07), minimumEngaged: metres(0.045), inwardTravel: metres(0.03) }],
        axle: {
          centreToJoint: metres(vehicle.arm),
          jointAboveCentre: metres(vehicle.above),
          springPosition: null,
          padInclination: 0 as Radians,
          steered: false,
          caster: null,
          windUp: null,
          guide: null,
        },
        firstJoint: { forward: metres(0), left: metres(0), up: metres(0) },
        limits,
        maxShaftSpeed: rpm(3000),
        refused: false,
        path: "drivelines[0]",
      },
    ],
    powertrain: {
      pivotForward: metres(vehicle.pivot[0]),
      pivotUp: metres(vehicle.pivot[2]),
      mountForward: metres(vehicle.mount[0]),
      mountUp: metres(vehicle.mount[2]),
    },
    adjusters: [
      {
        kind: "axle-wedge",
        id: "wedge",
        ...common,
        stock: { kind: "sizes", sizes: [degreesToRadians(2)] },
        path: "adjusters[0]",
        fitted: 0 as Radians,
        padLength: metres(0.1),
        thinEdge: metres(0.002),
      },
      {
        kind: "support-drop",
        id: "drop",
        ...common,
        stock: { kind: "sizes", sizes: [0.012] },
        path: "adjusters[1]",
        jointId: "J2",
        fitted: metres(0),
      },
      {
        kind: "mount-spacer",
        id: "spacer",
        labour: 1,
        parts: 0,
        stock: { kind: "sizes", sizes: [0.006] },
        path: "adjusters[2]",
        fitted: metres(0),
      },
    ],
    states: [],
    accuracy: DEFAULT_ACCURACY,
    draws,
    seed,
  };
}

/** The vehicle as the workshop reads it: every number with a fresh rectangular error. `uniform` gives [0, 1). */
export function misread(vehicle: RigidVehicle, uniform: () => number): RigidVehicle {
  const error = (halfWidth: number): number => halfWidth * (2 * uniform() - 1);
  const tape = (value: number): number => value + error(WORKSHOP.tape);
  return {
    inclination: vehicle.inclination.map((angle) => angle + error(WORKSHOP.gauge)),
    heading: vehicle.heading.map((angle) => angle + error(WORKSHOP.heading)),
    lengths: [tape(vehicle.lengths[0]), tape(vehicle.lengths[1])],
    bearing: tape(vehicle.bearing),
    arm: tape(vehicle.arm),
    above: tape(vehicle.above),
    pivot: [tape(vehicle.pivot[0]), 0, tape(vehicle.pivot[2])],
    mount: [tape(vehicle.mount[0]), 0, tape(vehicle.mount[2])],
  };
}
