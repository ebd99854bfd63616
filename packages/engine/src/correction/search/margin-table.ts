import { type CandidateSpace, placesOf, type Subset, writeAmounts } from "./candidate-space.js";
import { BLOCKED, candidateMargin, type Judge } from "./judge.js";

/** The best estimate of every candidate: exact, no draw. BLOCKED where a hard limit says no. */
export interface MarginTable {
  readonly margins: Float64Array;
  /** Number of candidates that no hard limit blocks. */
  readonly open: number;
}

/** Drivelines placed, in one state each, between two looks at the clock of the host: below 20 ms of work. */
const PER_STEP = 8192;

/** What one candidate costs: how often a driveline is placed in a state. */
export const workOf = ({ model }: Judge, { drivelines }: Subset): number => model.states.length * Math.max(1, drivelines.length);

/** Fills the table in steps; every `next` yields how many candidates are done. */
export function* marginTable(judge: Judge, space: CandidateSpace): Generator<number, MarginTable> {
  const margins = new Float64Array(space.size);
  let open = 0;
  let sinceStep = 0;
  for (const subset of space.subsets) {
    const places = new Int32Array(subset.adjusters.length);
    const work = workOf(judge, subset);
    for (let index = 0; index < subset.size; index++) {
      placesOf(subset, index, places);
      writeAmounts(subset, places, judge.amounts);
      const margin = candidateMargin(judge, subset.drivelines);
      margins[subset.offset + index] = margin;
      if (margin > BLOCKED) open++;
      sinceStep += work;
      if (sinceStep >= PER_STEP) {
        sinceStep = 0;
        yield subset.offset + index + 1;
      }
    }
  }
  return { margins, open };
}

/** Largest margin among the candidates at places [low, high] of a subset. */
export function bestMargin(table: MarginTable, subset: Subset, low: ArrayLike<number>, high: ArrayLike<number>): number {
  const { amounts, offset } = subset;
  let best = BLOCKED;
  const visit = (k: number, index: number): void => {
    const length = (amounts[k] as readonly number[]).length;
    for (let place = low[k] as number; place <= (high[k] as number); place++) {
      const at = index * length + place;
      if (k === amounts.length - 1) best = Math.max(best, table.margins[offset + at] as number);
      else visit(k + 1, at);
    }
  };
  if (amounts.length === 0) return table.margins[offset] as number;
  visit(0, 0);
  return best;
}
