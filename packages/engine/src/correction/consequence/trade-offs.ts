import { type Radians, radiansToDegrees } from "../../units/index.js";
import type { LimitKind } from "../search/chain-limits.js";
import type { StateLimitUse } from "../search/limit-report.js";
import { type Instruction, instruction } from "./instruction.js";

/** Angles of these limits are in radians; the others' values are rad/s2. */
const ANGLES: readonly LimitKind[] = ["joint-over", "joint-under", "equivalent-angle"];

/** A limit use as params: which limit, where, value and bound in degrees or rad/s2. */
export function limitParams({ limit, of, state, drivelineId, value, bound }: StateLimitUse): Readonly<Record<string, number | string>> {
  const numbers = ANGLES.includes(limit)
    ? { valueDeg: radiansToDegrees(value as Radians), limitDeg: radiansToDegrees(bound as Radians) }
    : { valueRadS2: value, limitRadS2: bound };
  return { limit, of, state, driveline: drivelineId, ...numbers };
}

/** Where the changes cure one state and push another over a limit it kept before; `before` and `after` list the same limits in the same order. */
export function tradeOffs(before: readonly StateLimitUse[], after: readonly StateLimitUse[]): readonly Instruction[] {
  const cured = before.filter(({ margin }, k) => margin < 0 && (after[k]?.margin ?? -1) >= 0);
  const broken = after.filter(({ margin }, k) => margin < 0 && (before[k]?.margin ?? -1) >= 0);
  const states = [...new Set(cured.map(({ state }) => state))];
  return broken.map((use) => instruction("trade-off", { ...limitParams(use), curedStates: states }, "too-little-to-conclude"));
}
