import { type LimitBounds, verdictOf } from "../uncertainty/index.js";
import type { BenchVerdict } from "./driveline-analysis.js";
import type { Estimate, LimitVerdict, Verdict } from "./estimate.js";

/** Comparing a computed angle with a limit of the same decimals must not fail by rounding: a millionth of a degree, far below any gauge. */
const ROUNDING = 2e-8;

/** Verdict of an estimate against its limits; not-gauged where there is none. */
export const estimateVerdict = (estimate: Estimate | null, limit: LimitBounds): LimitVerdict | "not-gauged" =>
  estimate ? verdictOf(estimate, limit) : "not-gauged";

/** The one word for several verdicts: the worst that is known; within only where nothing is missing, since what was not gauged may be anything. */
export function worstVerdict(verdicts: readonly Verdict[]): Verdict {
  for (const word of ["withheld", "over", "uncertain", "under", "not-gauged", "within"] as const) if (verdicts.includes(word)) return word;
  return "not-gauged";
}

/** The bench rule's usual targets, applied to the value as the trade does, without uncertainty. */
export function benchVerdict(residual: Estimate | null, met: number, accepted: number): BenchVerdict | null {
  if (!residual) return null;
  if (residual.value <= met + ROUNDING) return "met";
  return residual.value <= accepted + ROUNDING ? "acceptable" : "exceeded";
}
