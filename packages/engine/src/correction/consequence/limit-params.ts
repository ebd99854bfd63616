import { type Radians, radiansToDegrees } from "../../units/index.js";
import type { LimitKind } from "../search/chain-limits.js";
import type { StateLimitUse } from "../search/limit-report.js";

/** Angles of these limits are in radians; the others' values are rad/s2. */
const ANGLES: readonly LimitKind[] = ["joint-over", "joint-under", "equivalent-angle"];

/** Which limit, of what and where; value and bound in degrees or in rad/s2, as the keys say. */
export type LimitParams = {
  readonly limit: LimitKind;
  readonly of: string;
  readonly state: string;
  readonly driveline: string;
  readonly valueDeg?: number;
  readonly limitDeg?: number;
  readonly valueRadS2?: number;
  readonly limitRadS2?: number;
};

/** A limit use as params for words and for the file. */
export function limitParams({ limit, of, state, drivelineId, value, bound }: StateLimitUse): LimitParams {
  const numbers = ANGLES.includes(limit)
    ? { valueDeg: radiansToDegrees(value as Radians), limitDeg: radiansToDegrees(bound as Radians) }
    : { valueRadS2: value, limitRadS2: bound };
  return { limit, of, state, driveline: drivelineId, ...numbers };
}
