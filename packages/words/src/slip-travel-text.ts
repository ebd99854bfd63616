import type { Catalogue } from "./catalogue.js";

/** Below half of the last digit shown the spline stands where it stood. */
const STILL_MM = 0.05;

/** How far a slip spline moves, in mm outward: a direction is said only of what is seen to move. */
export function slipTravelText(travelMm: number, { correction, numbers }: Pick<Catalogue, "correction" | "numbers">): string {
  if (Math.abs(travelMm) < STILL_MM) return numbers.length(0);
  const size = numbers.length(Math.abs(travelMm));
  return travelMm > 0 ? correction.pulledOut(size) : correction.pushedIn(size);
}
