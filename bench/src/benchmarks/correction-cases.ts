import { type Adjuster, type CorrectionInput, DEFAULT_ACCURACY, type Stock, type VehicleState } from "@halfturn/engine/correction";
import type { ErrorSource, PoseModel } from "@halfturn/engine/gauging";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { degreesToRadians, metres, type Radians, rpm } from "@halfturn/engine/units";

const SHAFTS = ["source", "front", "back", "driven"];

/** Inclinations in degrees; joint angles of 3, 2.6 and 3.5 degrees, so that many candidates are near a limit and few draws decide. */
const INCLINATIONS = [2.4, 5.4, 8, 4.5].map(degreesToRadians);

function poses(): PoseModel {
  const source = (of: string, halfWidth: number): ErrorSource => ({
    of,
    path: of,
    shape: "rectangular",
    u: degreesToRadians(halfWidth) / Math.sqrt(3),
    origin: "measured",
  });
  const sources = [...SHAFTS.map((id) => source(id, 0.15)), ...SHAFTS.map((id) => source(`heading:${id}`, 0.5))];
  const unit = (at: number): readonly number[] => sources.map((_, k) => (k === at ? 1 : 0));
  return {
    shafts: SHAFTS,
    inclination: INCLINATIONS,
    heading: INCLINATIONS.map(() => 0 as Radians),
    sources,
    inclinationBy: SHAFTS.map((_, s) => unit(s)),
    headingBy: SHAFTS.map((_, s) => unit(4 + s)),
    findings: [],
  };
}

/** Five states: as gauged, laden, light, and the torque of drive and overrun. */
export const STATES: readonly VehicleState[] = (
  [
    ["normal", 0, 0, "none"],
    ["laden", -0.04, 0.6, "none"],
    ["light", 0.02, -0.3, "none"],
    ["pull", 0, 0, "drive-torque"],
    ["overrun", 0, 0, "coast-torque"],
  ] as const
).map(([id, travel, pitch, load]) => ({ id, drivelineId: null, axleTravel: metres(travel), pinionPitch: degreesToRadians(pitch), load }));

/** A stock of so many sizes from nought to the largest. */
export const sizes = (count: number, largest: number): Stock => ({
  kind: "range",
  minimum: largest / count,
  maximum: largest,
  step: largest / count,
});

/** A truck's two-section driveline with three things to change. */
export function correctionCase(stocks: readonly [Stock, Stock, Stock], states: readonly VehicleState[]): CorrectionInput {
  const common = { labour: 1, parts: 0, path: "adjusters" };
  const adjusters: readonly Adjuster[] = [
    {
      kind: "axle-wedge",
      id: "wedge",
      ...common,
      drivelineId: "rear",
      stock: stocks[0],
      fitted: 0 as Radians,
      padLength: metres(0.1),
      thinEdge: metres(0.002),
    },
    { kind: "support-drop", id: "drop", ...common, drivelineId: "rear", jointId: "J2", stock: stocks[1], fitted: metres(0) },
    { kind: "mount-spacer", id: "mount", ...common, stock: stocks[2], fitted: metres(0) },
  ];
  return {
    drivelines: [
      {
        driveline: {
          id: "rear",
          joints: ["J1", "J2", "J3"].map((id) => ({ id, kind: "cross" as const })),
          sections: [
            { id: "front", phasing: degreesToRadians(90), phasingMeasured: true, length: metres(1.18) },
            { id: "back", phasing: degreesToRadians(0), phasingMeasured: true, length: metres(1.24) },
          ],
        },
        runs: "rearward",
        poses: poses(),
        supports: [{ jointId: "J2", bearingToJoint: metres(0.12), bearingIs: "source-side", mounted: "below-crossmember" }],
        slips: [{ sectionId: "back", engaged: metres(0.07), minimumEngaged: metres(0.045), inwardTravel: metres(0.03) }],
        axle: {
          centreToJoint: metres(0.33),
          jointAboveCentre: metres(0),
          springPosition: "above-axle",
          padInclination: 0 as Radians,
          steered: false,
          caster: null,
          windUp: { drive: degreesToRadians(1), coast: degreesToRadians(0.5) },
          guide: null,
        },
        firstJoint: { forward: metres(0), left: metres(0), up: metres(0) },
        limits: DEFAULT_LIMITS,
        maxShaftSpeed: rpm(3000),
        refused: false,
        path: "drivelines[0]",
      },
    ],
    powertrain: { pivotForward: metres(1.35), pivotUp: metres(-0.06), mountForward: metres(0.25), mountUp: metres(-0.18) },
    adjusters,
    states,
    accuracy: DEFAULT_ACCURACY,
    draws: 2000,
    seed: 1,
  };
}
