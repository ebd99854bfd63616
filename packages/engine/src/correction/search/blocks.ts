import { type CandidateSpace, placesOf, type Subset, writeAmounts } from "./candidate-space.js";
import { changesOf } from "./choice.js";
import { BLOCKED, candidateMargin, hardReasons, type Judge } from "./judge.js";
import { limitReport } from "./limit-report.js";
import { type MarginTable, workOf } from "./margin-table.js";
import type { Block } from "./plan-result.js";

/** Drivelines placed, in one state each, between two looks at the clock of the host. */
const PER_STEP = 8192;

export interface Nearest {
  readonly subset: Subset;
  readonly places: Int32Array;
}

/** The open candidate with the largest margin; of several the first, which has fewest changes. */
export function nearestOpen(space: CandidateSpace, table: MarginTable): Nearest | null {
  let best = BLOCKED;
  let found: Nearest | null = null;
  for (const subset of space.subsets) {
    for (let index = 0; index < subset.size; index++) {
      const margin = table.margins[subset.offset + index] as number;
      if (margin <= best) continue;
      best = margin;
      const places = new Int32Array(subset.adjusters.length);
      placesOf(subset, index, places);
      found = { subset, places };
    }
  }
  return found;
}

/** Why no candidate keeps every limit: what the nearest exceeds, and the hard limit that rules out the best of those that would. Yields between pieces of work. */
export function* blocksOf(
  judge: Judge,
  space: CandidateSpace,
  table: MarginTable,
  nearest: Nearest | null,
): Generator<void, readonly Block[]> {
  const blocks: Block[] = [];
  if (nearest) {
    writeAmounts(nearest.subset, nearest.places, judge.amounts);
    const uses = limitReport(judge, judge.amounts).filter(({ margin }) => margin < 0);
    blocks.push(...[...uses].sort((a, b) => a.margin - b.margin).map((use): Block => ({ kind: "limit", use })));
  }
  const ruledOut = yield* bestRuledOut(judge, space, table);
  if (ruledOut) {
    writeAmounts(ruledOut.subset, ruledOut.places, judge.amounts);
    const changes = changesOf(judge.model, ruledOut.subset, ruledOut.places);
    blocks.push(...hardReasons(judge).map((reason): Block => ({ kind: "hard", reason, changes })));
  }
  if (blocks.length > 0 || nearest) return blocks;
  // Nothing is open and nothing would do even if it were: what forbids leaving everything as it is has to be put right first.
  judge.amounts.fill(0);
  return hardReasons(judge).map((reason): Block => ({ kind: "hard", reason, changes: [] }));
}

/** Of the candidates that a hard limit rules out, the one that would keep all others with most to spare. */
function* bestRuledOut(judge: Judge, space: CandidateSpace, table: MarginTable): Generator<void, Nearest | null> {
  let best = 0;
  let found: Nearest | null = null;
  let work = 0;
  for (const subset of space.subsets) {
    const places = new Int32Array(subset.adjusters.length);
    for (let index = 0; index < subset.size; index++) {
      if (table.margins[subset.offset + index] !== BLOCKED) continue;
      placesOf(subset, index, places);
      writeAmounts(subset, places, judge.amounts);
      const margin = candidateMargin(judge, subset.drivelines, false);
      if (margin >= best && (margin > best || !found)) {
        best = margin;
        found = { subset, places: places.slice() };
      }
      work += workOf(judge, subset);
      if (work >= PER_STEP) {
        work = 0;
        yield;
      }
    }
  }
  return found;
}
