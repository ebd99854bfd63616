import type { AdjusterModel } from "../geometry/adjuster-model.js";
import type { CorrectionModel } from "../geometry/correction-model.js";

/** One choice of adjusters, each used by one of its amounts. The empty choice is doing nothing. */
export interface Subset {
  /** Indices into the model's adjusters, rising by id. */
  readonly adjusters: readonly number[];
  /** Amounts of each, rising. */
  readonly amounts: readonly (readonly number[])[];
  readonly size: number;
  /** Number of its first candidate among all. */
  readonly offset: number;
  readonly labour: number;
  /** Drivelines that it can move. */
  readonly drivelines: readonly number[];
}

/** All combinations of at most `maxChanges` of the adjusters that `allowed` lets through. */
export interface CandidateSpace {
  readonly subsets: readonly Subset[];
  readonly size: number;
}

/** Lists the choices of 0 to `maxChanges` usable adjusters, fewest first within each first adjuster; `size` counts all candidates, doing nothing included. */
export function candidateSpace(model: CorrectionModel, maxChanges: number, allowed: (adjuster: AdjusterModel) => boolean): CandidateSpace {
  const usable = model.adjusters
    .flatMap((adjuster, index) =>
      adjuster.unusable === null && adjuster.amounts.length > 0 && allowed(adjuster) ? [{ adjuster, index }] : [],
    )
    .sort((a, b) => compareText(a.adjuster.adjuster.id, b.adjuster.adjuster.id));
  const subsets: Subset[] = [];
  let offset = 0;
  const extend = (chosen: readonly (typeof usable)[number][], from: number): void => {
    const amounts = chosen.map(({ adjuster }) => adjuster.amounts);
    const size = amounts.reduce((product, list) => product * list.length, 1);
    const labour = chosen.reduce((sum, { adjuster }) => sum + adjuster.adjuster.labour + adjuster.adjuster.parts, 0);
    const drivelines = [...new Set(chosen.flatMap(({ adjuster }) => adjuster.drivelines))].sort((a, b) => a - b);
    subsets.push({ adjusters: chosen.map(({ index }) => index), amounts, size, offset, labour, drivelines });
    offset += size;
    if (chosen.length === maxChanges) return;
    for (let k = from; k < usable.length; k++) extend([...chosen, usable[k] as (typeof usable)[number]], k + 1);
  };
  extend([], 0);
  return { subsets, size: offset };
}

/** By code units: the same order in every language and on every machine. */
export const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Places of a candidate's amounts from its number. */
export function placesOf(subset: Subset, index: number, out: Int32Array | number[]): void {
  let rest = index;
  for (let k = subset.adjusters.length - 1; k >= 0; k--) {
    const length = (subset.amounts[k] as readonly number[]).length;
    out[k] = rest % length;
    rest = Math.floor(rest / length);
  }
}

/** Writes the amounts of a candidate over all adjusters of the model, the others nought. */
export function writeAmounts(subset: Subset, places: ArrayLike<number>, out: Float64Array): void {
  out.fill(0);
  for (let k = 0; k < subset.adjusters.length; k++) {
    out[subset.adjusters[k] as number] = (subset.amounts[k] as readonly number[])[places[k] as number] as number;
  }
}

/** Total of |amount|/step: the measure of how big a change is. */
export function totalSteps(model: CorrectionModel, subset: Subset, places: ArrayLike<number>): number {
  let sum = 0;
  for (let k = 0; k < subset.adjusters.length; k++) {
    const { step } = model.adjusters[subset.adjusters[k] as number] as AdjusterModel;
    sum += Math.abs((subset.amounts[k] as readonly number[])[places[k] as number] as number) / step;
  }
  return sum;
}
