import type { JointKind } from "../kinematics/driveline.js";
import type { Radians, RadiansPerSecondSquared } from "../units/index.js";

/** A limit and where it comes from, so that nobody has to take it on trust. */
export interface Limit<Value extends number> {
  readonly value: Value;
  /** A `LimitSource` for a built-in limit, somebody's own words for an override. */
  readonly source: string;
}

/** Every limit that a verdict can rest on. A case may override any of them. */
export interface LimitSet {
  /** Peak acceleration of a single joint at the highest shaft speed; sets the largest operating angle of a cross joint. */
  readonly jointAcceleration: Limit<RadiansPerSecondSquared>;
  /** What the kind of joint allows, whatever the speed. */
  readonly jointAngle: Readonly<Record<JointKind, Limit<Radians>>>;
  /** Least operating angle: needles must roll. */
  readonly minimumAngle: Readonly<Record<JointKind, Limit<Radians>>>;
  readonly equivalentAngle: Limit<Radians>;
  readonly drivenAccelerationWarn: Limit<RadiansPerSecondSquared>;
  readonly drivenAccelerationOver: Limit<RadiansPerSecondSquared>;
  readonly inertiaDrive: Limit<RadiansPerSecondSquared>;
  readonly inertiaCoast: Limit<RadiansPerSecondSquared>;
  /** Bench rule: met up to, accepted up to. */
  readonly benchMet: Limit<Radians>;
  readonly benchAccepted: Limit<Radians>;
}
