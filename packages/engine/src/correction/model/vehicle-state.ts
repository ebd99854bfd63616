import type { Metres, Radians } from "../../units/index.js";

/** Torque in the axle while the state lasts; not the drive and coast of the inertia limits. */
export type AxleLoad = "none" | "drive-torque" | "coast-torque";

/** A state of the vehicle to look at besides the one that was gauged. */
export interface VehicleState {
  readonly id: string;
  /** The driveline whose axle moves; null = every one. */
  readonly drivelineId: string | null;
  /** As `ride-height`: + = body higher over the axle than as gauged (rebound), - = lower (laden, bump). */
  readonly axleTravel: Metres;
  /** Turn of the pinion that goes with the travel, + = nose up; null = from the axle's guides. */
  readonly pinionPitch: Radians | null;
  readonly load: AxleLoad;
}

/** The vehicle as it was gauged. */
export const AS_GAUGED: VehicleState = {
  id: "as-gauged",
  drivelineId: null,
  axleTravel: 0 as Metres,
  pinionPitch: 0 as Radians,
  load: "none",
};
