import type { PoseModel } from "../../gauging/index.js";
import type { Driveline } from "../../kinematics/index.js";
import type { LimitSet } from "../../limits/index.js";
import type { Metres, Rpm } from "../../units/index.js";
import type { Axle } from "./axle.js";
import type { Runs, VehiclePoint } from "./vehicle-frame.js";

/** A support bearing beside an inner joint. */
export interface Support {
  readonly jointId: string;
  /** Bearing centre to joint centre; null = not measured, the joint is taken to move as the bearing does. */
  readonly bearingToJoint: Metres | null;
  /** Which side of the joint the bearing sits on. */
  readonly bearingIs: "source-side" | "driven-side";
  readonly mounted: "below-crossmember" | "above-crossmember" | null;
}

/** A section's slip spline as the vehicle stood when it was gauged. null = not measured. */
export interface Slip {
  readonly sectionId: string;
  readonly engaged: Metres | null;
  readonly minimumEngaged: Metres | null;
  /** How far it can still be pushed in. */
  readonly inwardTravel: Metres | null;
}

/** One driveline as gauged, with what its correction needs. */
export interface CorrectionDriveline {
  readonly driveline: Driveline;
  readonly runs: Runs;
  readonly poses: PoseModel;
  readonly supports: readonly Support[];
  readonly slips: readonly Slip[];
  readonly axle: Axle | null;
  /** First joint centre from the first joint centre of the case's first driveline; null = not measured. The first driveline has nought here. */
  readonly firstJoint: VehiclePoint | null;
  readonly limits: LimitSet;
  /** Highest propeller-shaft speed in use; null = not given, 3000 rpm is taken. */
  readonly maxShaftSpeed: Rpm | null;
  /** A stop finding of the gauging stands that nobody accepted: nothing may be predicted from it. */
  readonly refused: boolean;
  /** Place in the case file: `drivelines[0]`. */
  readonly path: string;
}
