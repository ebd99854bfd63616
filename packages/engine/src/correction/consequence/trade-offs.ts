import type { StateLimitUse } from "../search/limit-report.js";
import { type Instruction, instruction } from "./instruction.js";
import { limitParams } from "./limit-params.js";

/** Where the changes push a state over a limit it kept before, and which states they cure meanwhile, if any; `before` and `after` list the same limits in the same order. */
export function tradeOffs(before: readonly StateLimitUse[], after: readonly StateLimitUse[]): readonly Instruction[] {
  const cured = before.filter(({ margin }, k) => margin < 0 && (after[k]?.margin ?? -1) >= 0);
  const broken = after.filter(({ margin }, k) => margin < 0 && (before[k]?.margin ?? -1) >= 0);
  const states = [...new Set(cured.map(({ state }) => state))];
  return broken.map((use) => instruction("trade-off", { ...limitParams(use), curedStates: states }, "too-little-to-conclude"));
}
