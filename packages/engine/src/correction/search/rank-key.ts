import type { CorrectionModel } from "../geometry/correction-model.js";
import { compareText, type Subset } from "./candidate-space.js";

/** What plans are ranked by; of a box of candidates every part is the best that any of them can have. */
export interface RankKey {
  /** Draws out of all in which some limit is exceeded. */
  fails: number;
  readonly labour: number;
  /** Share of the tightest limit that is left at the best estimate. */
  readonly margin: number;
  readonly changes: number;
  /** Total |amount|/step. */
  readonly steps: number;
}

/** Sums of steps that differ by less are equal: 0.1 + 0.2 is 0.3. */
const SAME_STEPS = 1e-9;
/** Margins that differ by less are equal, so that rounding does not decide before the size of the change does. */
const SAME_MARGIN = 1e-12;

/** An order of candidates: < 0 = a ranks before b. Ids are left to the caller. It must rank a key that is part by part at least as good no later. */
export type KeyOrder = (a: RankKey, b: RankKey, draws: number) => number;

/**
 * Chance, then labour, then margin, number of changes and size. Among candidates that fail in every draw labour says nothing, so there the margin goes first:
 * the cheapest of what cures nothing is no answer. Margins and steps are put on a grid first, which keeps the order a true order.
 */
export const compareKeys: KeyOrder = (a, b, draws) =>
  a.fails - b.fails || (a.fails < draws ? a.labour - b.labour : 0) || byMargin(a, b) || a.labour - b.labour || bySize(a, b);

/** Chance, then margin: what helps most, whatever its labour. */
export const compareByEffect: KeyOrder = (a, b) => a.fails - b.fails || byMargin(a, b) || a.labour - b.labour || bySize(a, b);

/** Whether a keeps more than b: every limit in more draws, or in as many with more of the tightest left. */
export const helpsMore = (a: RankKey, b: RankKey): boolean => (a.fails - b.fails || byMargin(a, b)) < 0;

const byMargin = (a: RankKey, b: RankKey): number => onGrid(b.margin, SAME_MARGIN) - onGrid(a.margin, SAME_MARGIN);
const bySize = (a: RankKey, b: RankKey): number => a.changes - b.changes || onGrid(a.steps, SAME_STEPS) - onGrid(b.steps, SAME_STEPS);

const onGrid = (value: number, step: number): number =>
  Number.isFinite(value) ? Math.round(value / step) : value > 0 ? Number.MAX_VALUE : -Number.MAX_VALUE;

/** The last tie: ids in turn, then amounts rising. */
export function compareIds(model: CorrectionModel, a: Subset, placesA: ArrayLike<number>, b: Subset, placesB: ArrayLike<number>): number {
  const ids = ({ adjusters }: Subset): string => adjusters.map((k) => model.adjusters[k]?.adjuster.id).join("\n");
  const byId = compareText(ids(a), ids(b));
  if (byId !== 0) return byId;
  for (let k = 0; k < a.adjusters.length; k++) {
    const difference = (a.amounts[k]?.[placesA[k] as number] as number) - (b.amounts[k]?.[placesB[k] as number] as number);
    if (difference !== 0) return difference;
  }
  return 0;
}
