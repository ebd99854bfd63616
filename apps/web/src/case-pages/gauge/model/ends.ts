import type { CaseReading, RunsToward, VehicleSide } from "@halfturn/casefile";

export type ShaftEnd = "source-end" | "driven-end";
export type VehicleEnd = "front" | "rear";
export type ScreenSide = "left" | "right";

/** The end of the vehicle that an end of a shaft lies toward. */
export const vehicleEndOf = (runs: RunsToward, end: ShaftEnd): VehicleEnd =>
  (runs === "rearward") === (end === "driven-end") ? "rear" : "front";

/** Who looks from the vehicle's left has its front on the left hand; from the right, on the right hand. */
export const screenSideOf = (end: VehicleEnd, readFrom: VehicleSide): ScreenSide =>
  (end === "front") === (readFrom === "left") ? "left" : "right";

/** The end of a shaft that lies on one hand of who reads it. */
export function endOnScreen(runs: RunsToward, readFrom: VehicleSide, hand: ScreenSide): ShaftEnd {
  const driven = screenSideOf(vehicleEndOf(runs, "driven-end"), readFrom);
  return driven === hand ? "driven-end" : "source-end";
}

/** The end that a reading calls lower; on a face, the one that its top leans toward. Null for a level one. */
export const notedEnd = (reading: CaseReading): ShaftEnd | null => ("face" in reading ? reading.topLeans : reading.lower) ?? null;
