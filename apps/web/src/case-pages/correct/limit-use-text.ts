import { limitParams, type StateLimitUse } from "@halfturn/engine/correction";
import { isOfWhole } from "@halfturn/words";
import type { CorrectionView } from "./correction-view.js";

/** Limit, value, bound and state of a limit use, as the sentences of the catalogue take them. */
export function limitUseText(
  used: StateLimitUse,
  { catalogue: { correction, numbers }, names }: CorrectionView,
): [limit: string, value: string, bound: string, state: string] {
  const use = limitParams(used);
  const part = isOfWhole(use.limit) ? names.driveline(use.driveline) : names.part(use.of, use.driveline);
  const text = (deg: number | undefined, acceleration: number | undefined): string =>
    deg === undefined ? numbers.acceleration(acceleration ?? 0) : numbers.angle(deg);
  return [
    correction.limitOf(correction.limits[use.limit], part),
    text(use.valueDeg, use.valueRadS2),
    text(use.limitDeg, use.limitRadS2),
    names.state(use.state),
  ];
}
