import { equivalentAngle, type Joint, motionScope, peakAccelerationCoefficient, unevennessOfAngle } from "../../kinematics/index.js";
import { angleOfAcceleration, maximumOperatingAngle } from "../../limits/index.js";
import { type RadiansPerSecond, rpm, rpmToRadiansPerSecond } from "../../units/index.js";
import { type AxleLoad, type CorrectionDriveline, limitsInState } from "../model/index.js";
import { type MapKind, mapKind } from "./chain-scratch.js";

/** Speed taken where the case gives none, rpm: agreed design value. */
const SPEED_NOT_GIVEN = rpm(3000);

/** Every limit of one driveline, as the search tests it. Angles in radians; `uneven*` are unevenness limits, |q| <= limit |p|. */
export interface ChainLimits {
  readonly joints: readonly Joint[];
  readonly kinds: readonly MapKind[];
  readonly speed: RadiansPerSecond;
  readonly maximum: readonly number[];
  readonly minimum: readonly number[];
  readonly equivalentMaximum: number;
  readonly drivenMaximum: number;
  readonly driveMaximum: number;
  readonly coastMaximum: number;
  /** Whole chain: the tighter of equivalent angle and driven acceleration. */
  readonly unevenWhole: number;
  readonly unevenDrive: number;
  readonly unevenCoast: number;
  /** Whether each part's motion is known; a part that is not is not judged. */
  readonly knowsWhole: boolean;
  readonly knowsDrive: readonly boolean[];
  readonly knowsCoast: readonly boolean[];
}

/** Unevenness at which a uniformly driven chain reaches an acceleration (rad/s2) at a speed (rad/s). */
const unevenAt = (acceleration: number, speed: RadiansPerSecond): number => unevennessOfAngle(angleOfAcceleration(acceleration, speed));

/** Limits of a driveline at its highest shaft speed (3000 rpm where none is given), while the axle bears a load: angles in radians, accelerations in rad/s2, unevenness in [0, 1). */
export function chainLimits({ driveline, limits: steady, maxShaftSpeed }: CorrectionDriveline, load: AxleLoad): ChainLimits {
  const limits = limitsInState(steady, load);
  const speed = rpmToRadiansPerSecond(maxShaftSpeed ?? SPEED_NOT_GIVEN);
  const scope = motionScope(driveline);
  const { joints } = driveline;
  return {
    joints,
    kinds: joints.map(mapKind),
    speed,
    maximum: joints.map((joint) => maximumOperatingAngle(joint, speed, limits)),
    minimum: joints.map((joint) => limits.minimumAngle[joint.kind].value),
    equivalentMaximum: limits.equivalentAngle.value,
    drivenMaximum: limits.drivenAccelerationOver.value,
    driveMaximum: limits.inertiaDrive.value,
    coastMaximum: limits.inertiaCoast.value,
    unevenWhole: Math.min(unevennessOfAngle(limits.equivalentAngle.value), unevenAt(limits.drivenAccelerationOver.value, speed)),
    unevenDrive: unevenAt(limits.inertiaDrive.value, speed),
    unevenCoast: unevenAt(limits.inertiaCoast.value, speed),
    knowsWhole: scope.whole,
    knowsDrive: scope.drive,
    knowsCoast: scope.coast,
  };
}

/** What a limit is about. */
export type LimitKind = "joint-over" | "joint-under" | "equivalent-angle" | "driven-acceleration" | "inertia-drive" | "inertia-coast";

/** One quantity against its limit, in radians or rad/s2. `of`: a joint or section id, or the driveline's. */
export interface LimitUse {
  readonly limit: LimitKind;
  readonly of: string;
  readonly value: number;
  readonly bound: number;
  /** Share of the limit that is left: 1 - value/bound for an upper limit, value/bound - 1 for a lower one; < 0 = exceeded. */
  readonly margin: number;
}

/** Equivalent angle in radians, [0, pi/2), of an unevenness in [0, 1). */
export const equivalentOf = (unevenness: number): number => equivalentAngle(unevenness);
/** Peak acceleration in rad/s2 of an unevenness in [0, 1) at a uniform speed in rad/s. */
export const accelerationOf = (unevenness: number, speed: number): number => peakAccelerationCoefficient(unevenness) * speed * speed;
