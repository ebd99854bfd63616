import { type Vec3, vec3 } from "../../geometry/index.js";
import type { Metres } from "../../units/index.js";

/** Which way the power flows along a driveline: `rearward` to a rear axle, `forward` to a front axle. */
export type Runs = "rearward" | "forward";

/** A point beside the vehicle in its own words (ISO 8855: X forward, Y left, Z up), metres. */
export interface VehiclePoint {
  readonly forward: Metres;
  readonly left: Metres;
  readonly up: Metres;
}

/** +1 where chain X and Y are the vehicle's own (a shaft running forward), -1 where both are turned round. */
export const chainSign = (runs: Runs): 1 | -1 => (runs === "forward" ? 1 : -1);

/** A vehicle displacement or point in the chain frame of a driveline: the only place where the two meet. The origin stays. */
export function toChain(runs: Runs, { forward, left, up }: VehiclePoint): Vec3 {
  const sign = chainSign(runs);
  // Adding nought keeps a turned zero from becoming -0.
  return vec3(sign * forward + 0, sign * left + 0, up);
}
