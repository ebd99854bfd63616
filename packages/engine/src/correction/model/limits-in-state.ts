import type { LimitSet } from "../../limits/index.js";
import type { Radians } from "../../units/index.js";
import type { AxleLoad } from "./vehicle-state.js";

const NONE = { value: 0 as Radians, source: "not-asked-under-torque" };
const NO_MINIMUM: LimitSet["minimumAngle"] = { cross: NONE, "double-cross": NONE, ball: NONE, flexible: NONE };

/**
 * The limits that hold while a state lasts, angles in radians. A cross joint asks for a least angle because needles that never roll wear their seats over the
 * miles; torque winds the axle up for moments, so no least angle is asked then. Every upper limit holds in every state. Common practice, no source.
 */
export const limitsInState = (limits: LimitSet, load: AxleLoad): LimitSet =>
  load === "none" ? limits : { ...limits, minimumAngle: NO_MINIMUM };
