import { degreesToRadians, type Radians, type RadiansPerSecondSquared } from "../units/index.js";
import type { LimitSource } from "./limit-source.js";
import type { Limit, LimitSet } from "./limits.js";

const angle = (degrees: number, source: LimitSource): Limit<Radians> => ({ value: degreesToRadians(degrees), source });
const acceleration = (value: number, source: LimitSource): Limit<RadiansPerSecondSquared> => ({
  value: value as RadiansPerSecondSquared,
  source,
});

/** The limits that hold unless a case overrides them, each with where it comes from. */
export const DEFAULT_LIMITS: LimitSet = {
  jointAcceleration: acceleration(1000, "joint-acceleration-practice"),
  jointAngle: {
    cross: angle(15, "joint-kind-practice"),
    "double-cross": angle(30, "joint-kind-practice"),
    ball: angle(12, "joint-kind-practice"),
    flexible: angle(3, "joint-kind-practice"),
  },
  minimumAngle: {
    cross: angle(0.5, "needles-must-roll"),
    "double-cross": angle(0, "no-minimum-known"),
    ball: angle(0, "no-minimum-known"),
    flexible: angle(0, "no-minimum-known"),
  },
  equivalentAngle: angle(3, "non-uniformity-practice"),
  drivenAccelerationWarn: acceleration(300, "torsional-general-use"),
  drivenAccelerationOver: acceleration(400, "torsional-upper-figure"),
  inertiaDrive: acceleration(1000, "inertia-from-source"),
  inertiaCoast: acceleration(500, "inertia-from-axle"),
  benchMet: angle(0.5, "common-practice"),
  benchAccepted: angle(0.75, "common-practice"),
};
