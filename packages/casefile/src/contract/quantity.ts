import type { Estimate } from "@halfturn/engine/analysis";
import { radians, radiansToDegrees } from "@halfturn/engine/units";
import type { Quantity } from "./analysis-contract.js";

/** An estimate whose unit is the same inside and outside. */
export const quantity = (estimate: Estimate | null): Quantity =>
  estimate && { value: estimate.value, u: estimate.u, interval95: [estimate.low, estimate.high] };

/** An angle of the engine in degrees, at full precision. */
export const degrees = (angle: number): number => radiansToDegrees(radians(angle));

/** An estimated angle in degrees. */
export const angleQuantity = (estimate: Estimate | null): Quantity =>
  estimate && { value: degrees(estimate.value), u: degrees(estimate.u), interval95: [degrees(estimate.low), degrees(estimate.high)] };
