import { degreesToRadians, type Radians, type RadiansPerSecondSquared } from "../units/index.js";
import type { Limit, LimitSet } from "./limits.js";

const angle = (degrees: number, source: string): Limit<Radians> => ({ value: degreesToRadians(degrees), source });
const acceleration = (value: number, source: string): Limit<RadiansPerSecondSquared> => ({
  value: value as RadiansPerSecondSquared,
  source,
});

const KIND_ANGLE = "common practice, no source; the maker's figure for the joint goes first";

/** The limits that hold unless a case overrides them, each with where it comes from. */
export const DEFAULT_LIMITS: LimitSet = {
  jointAcceleration: acceleration(
    1000,
    "from memory: design practice for the inertia of a shaft driven through a joint; widely printed tables of angle against speed imply 855 to 1023 rad/s2",
  ),
  jointAngle: {
    cross: angle(15, KIND_ANGLE),
    "double-cross": angle(30, KIND_ANGLE),
    ball: angle(12, KIND_ANGLE),
    flexible: angle(3, KIND_ANGLE),
  },
  minimumAngle: {
    cross: angle(0.5, "common practice, no source: needles that never roll dent their races"),
    "double-cross": angle(0, "no minimum known"),
    ball: angle(0, "no minimum known"),
    flexible: angle(0, "no minimum known"),
  },
  equivalentAngle: angle(
    3,
    "from memory: common design practice; Elbe, technical data sheet 3, states a non-uniformity of at most 0.0027, which is 2.98 degrees",
  ),
  drivenAccelerationWarn: acceleration(300, "from memory: torsional acceleration in general use"),
  drivenAccelerationOver: acceleration(400, "from memory: torsional acceleration, upper figure met in practice"),
  inertiaDrive: acceleration(1000, "from memory: inertia excitation, driven from the transmission side"),
  inertiaCoast: acceleration(500, "from memory: inertia excitation, driven from the axle side"),
  benchMet: angle(0.5, "common practice, no source"),
  benchAccepted: angle(0.75, "common practice, no source"),
};
