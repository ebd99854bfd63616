import type { AdjusterModel } from "../geometry/adjuster-model.js";
import { type AmountUnit, amountUnit } from "../model/index.js";
import { BLOCKED, candidateMargin, type Judge } from "./judge.js";

/** The amount of one adjuster, used alone and cut to measure, that leaves most of the tightest limit. */
export interface ContinuousOptimum {
  readonly adjusterId: string;
  readonly amount: number;
  readonly unit: AmountUnit;
  readonly margin: number;
}

/** Points over the whole range before the best is narrowed down: the margin has several humps. */
const POINTS = 60;
/** Golden-section steps: each keeps 0.618 of the range, 40 reach a millionth of a millionth of a point's width. */
const ROUNDS = 40;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Between the least and greatest amount in stock, nought included; null for an adjuster that cannot be used, goes in whole steps, or is blocked throughout. */
export function continuousOptimum(judge: Judge, k: number): ContinuousOptimum | null {
  const { adjuster, amounts, drivelines, unusable } = judge.model.adjusters[k] as AdjusterModel;
  if (unusable || adjuster.kind === "rephase" || amounts.length === 0) return null;
  const low = Math.min(0, amounts[0] as number);
  const high = Math.max(0, amounts[amounts.length - 1] as number);
  const marginAt = (amount: number): number => {
    judge.amounts.fill(0);
    judge.amounts[k] = amount;
    return candidateMargin(judge, drivelines);
  };
  let best = { amount: 0, margin: marginAt(0) };
  const keep = (amount: number): number => {
    const margin = marginAt(amount);
    if (margin > best.margin) best = { amount, margin };
    return margin;
  };
  for (let point = 0; point <= POINTS; point++) keep(low + ((high - low) * point) / POINTS);
  let from = Math.max(low, best.amount - (high - low) / POINTS);
  let to = Math.min(high, best.amount + (high - low) / POINTS);
  for (let round = 0; round < ROUNDS; round++) {
    const a = to - GOLDEN * (to - from);
    const b = from + GOLDEN * (to - from);
    if (keep(a) < keep(b)) from = a;
    else to = b;
  }
  return best.margin === BLOCKED
    ? null
    : { adjusterId: adjuster.id, amount: best.amount, unit: amountUnit(adjuster.kind), margin: best.margin };
}
