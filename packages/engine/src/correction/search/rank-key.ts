import type { CorrectionModel } from "../geometry/correction-model.js";
import { compareText, type Subset } from "./candidate-space.js";

/** What plans are ranked by, in this order; of a box of candidates every part is the best that any of them can have. */
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

/** < 0: a ranks before b. Ids are left to the caller. Margins and steps are put on a grid first, which keeps the order a true order. */
export function compareKeys(a: RankKey, b: RankKey): number {
  return (
    a.fails - b.fails ||
    a.labour - b.labour ||
    onGrid(b.margin, SAME_MARGIN) - onGrid(a.margin, SAME_MARGIN) ||
    a.changes - b.changes ||
    onGrid(a.steps, SAME_STEPS) - onGrid(b.steps, SAME_STEPS)
  );
}

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
