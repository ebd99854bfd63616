import type { Limit, LimitSet } from "@halfturn/engine/limits";
import { degreesToRadians, type Radians, type RadiansPerSecondSquared } from "@halfturn/engine/units";
import type { Case, CaseLimits } from "../schema/case.js";

type LimitKey = Exclude<keyof CaseLimits, "source">;

/** The limits to judge by: the defaults, each replaced where the case has one of its own. An override's source is `limits.source`, or its place in the file. */
export function toLimits(document: Case, defaults: LimitSet): LimitSet {
  const own = document.limits ?? {};
  const override = <Value extends number>(key: LimitKey, standard: Limit<Value>, convert: (value: number) => Value): Limit<Value> => {
    const value = own[key];
    return value === undefined ? standard : { value: convert(value), source: own.source ?? `limits.${key}` };
  };
  const angle = (key: LimitKey, standard: Limit<Radians>) => override(key, standard, degreesToRadians);
  const acceleration = (key: LimitKey, standard: Limit<RadiansPerSecondSquared>) =>
    override(key, standard, (value) => value as RadiansPerSecondSquared);
  return {
    jointAcceleration: acceleration("jointAccelerationRadS2", defaults.jointAcceleration),
    jointAngle: {
      cross: angle("crossMaximumDeg", defaults.jointAngle.cross),
      "double-cross": angle("doubleCrossMaximumDeg", defaults.jointAngle["double-cross"]),
      ball: angle("ballMaximumDeg", defaults.jointAngle.ball),
      flexible: angle("flexibleMaximumDeg", defaults.jointAngle.flexible),
    },
    minimumAngle: {
      cross: angle("crossMinimumDeg", defaults.minimumAngle.cross),
      "double-cross": angle("doubleCrossMinimumDeg", defaults.minimumAngle["double-cross"]),
      ball: angle("ballMinimumDeg", defaults.minimumAngle.ball),
      flexible: angle("flexibleMinimumDeg", defaults.minimumAngle.flexible),
    },
    equivalentAngle: angle("equivalentMaximumDeg", defaults.equivalentAngle),
    drivenAccelerationWarn: acceleration("drivenAccelerationWarnRadS2", defaults.drivenAccelerationWarn),
    drivenAccelerationOver: acceleration("drivenAccelerationOverRadS2", defaults.drivenAccelerationOver),
    inertiaDrive: acceleration("inertiaDriveRadS2", defaults.inertiaDrive),
    inertiaCoast: acceleration("inertiaCoastRadS2", defaults.inertiaCoast),
    benchMet: angle("benchMetDeg", defaults.benchMet),
    benchAccepted: angle("benchAcceptedDeg", defaults.benchAccepted),
  };
}
