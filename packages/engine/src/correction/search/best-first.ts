import { type BoxSlack, boxSlack } from "./box-slack.js";
import { type CandidateSpace, type Subset, totalSteps, writeAmounts } from "./candidate-space.js";
import type { Slack } from "./chain-judge.js";
import { Heap } from "./heap.js";
import { BLOCKED, drawFails, type Judge, prepare } from "./judge.js";
import { bestMargin, type MarginTable, workOf } from "./margin-table.js";
import { compareIds, compareKeys, type KeyOrder, type RankKey } from "./rank-key.js";

/** A candidate that the search has finished with. */
export interface Ranked {
  readonly subset: Subset;
  readonly places: Int32Array;
  readonly key: RankKey;
}

/** A box of candidates, or one of them (low = high), with the best key that any of them can have. */
interface Box {
  readonly subset: Subset;
  readonly low: Int32Array;
  readonly high: Int32Array;
  readonly centre: Int32Array;
  readonly key: RankKey;
  readonly slack: readonly Slack[] | null;
  /** Draws looked at, and in how many of them every candidate of the box certainly fails. */
  seen: number;
  failed: number;
}

const isSingle = ({ low, high }: Box): boolean => low.every((place, k) => place === high[k]);

/** Draws looked at before anything else is tried; then twice as many each time. */
const FIRST_LOOK = 16;
/** A box in which fewer draws than this share fail for certain says too little: it is split. */
const TELLING_SHARE = 0.5;
/** Drivelines judged on a draw, in one state each, between two looks at the clock of the host: below 20 ms of work. */
const PER_STEP = 16_384;

/**
 * Candidates in exact order of rank, best first, as many as are asked for; yields between pieces of work.
 *
 * Why nothing is lost. Every box carries a key that is, part by part, at least as good as that of each candidate in it: `fails` counts only draws in which all
 * of them fail for certain (`exceeds`), the margin is the largest and the total of steps the smallest among them, labour and number of changes are the same
 * for all. Splitting a box or looking at more draws can only make its key worse. The box with the best key is taken first, boxes and unfinished candidates
 * before finished ones of equal key. So when a finished candidate is taken, no candidate that is not yet given out can rank before it: neither one in a box,
 * whose key would be better or equal and would have been taken, nor a finished one, by the order of the heap.
 */
export function* bestFirst(
  judge: Judge,
  space: CandidateSpace,
  table: MarginTable,
  allowed: (subset: Subset) => boolean,
  order: KeyOrder = compareKeys,
): Generator<Ranked | null, void> {
  const { model, drawn } = judge;
  const bounds = boxSlack(judge);
  const heap = new Heap<Box>((a, b) => before(a, b) < 0);
  const finished = (box: Box): boolean => box.seen === drawn.draws && isSingle(box);

  function before(a: Box, b: Box): number {
    const byKey = order(a.key, b.key, drawn.draws);
    if (byKey !== 0) return byKey;
    const done = Number(finished(a)) - Number(finished(b));
    return done || compareIds(model, a.subset, a.low, b.subset, b.low);
  }

  const add = (subset: Subset, low: Int32Array, high: Int32Array, fails: number): void => {
    const margin = bestMargin(table, subset, low, high);
    if (margin === BLOCKED) return;
    heap.push(newBox(judge, bounds, subset, low, high, margin, fails));
  };
  for (const subset of space.subsets) {
    if (allowed(subset))
      add(
        subset,
        new Int32Array(subset.adjusters.length),
        Int32Array.from(subset.amounts, ({ length }) => length - 1),
        0,
      );
  }

  let work = 0;
  for (let box = heap.pop(); box; box = heap.pop()) {
    if (finished(box)) {
      yield { subset: box.subset, places: box.low, key: box.key };
      continue;
    }
    const telling = box.seen === 0 || box.failed >= TELLING_SHARE * box.seen;
    if (isSingle(box) || (box.slack && telling && box.seen < drawn.draws)) {
      work += lookAtDraws(judge, box) * workOf(judge, box.subset);
      heap.push(box);
    } else {
      for (const [low, high] of halves(box)) add(box.subset, low, high, box.key.fails);
      work += 1;
    }
    if (work >= PER_STEP) {
      work = 0;
      yield null;
    }
  }
}

function newBox(judge: Judge, bounds: BoxSlack, subset: Subset, low: Int32Array, high: Int32Array, margin: number, fails: number): Box {
  const centre = low.map((place, k) => (place + (high[k] as number)) >> 1);
  const single = low.every((place, k) => place === high[k]);
  const key: RankKey = {
    fails,
    labour: subset.labour,
    margin,
    changes: subset.adjusters.length,
    steps: totalSteps(judge.model, subset, smallest(subset, low, high)),
  };
  const slack = single ? judge.exact : bounds.slackOf(subset, low, high, centre);
  return { subset, low, high, centre, key, slack, seen: 0, failed: 0 };
}

/** The place of the amount nearest to nought in each range. */
const smallest = ({ amounts }: Subset, low: Int32Array, high: Int32Array): Int32Array =>
  low.map((from, k) => {
    const list = amounts[k] as readonly number[];
    let best = from;
    for (let place = from; place <= (high[k] as number); place++)
      if (Math.abs(list[place] as number) < Math.abs(list[best] as number)) best = place;
    return best;
  });

/** Looks at some more draws; returns how many. */
function lookAtDraws(judge: Judge, box: Box): number {
  const { drawn } = judge;
  const until = Math.min(drawn.draws, box.seen === 0 ? FIRST_LOOK : 2 * box.seen);
  writeAmounts(box.subset, box.centre, judge.amounts);
  prepare(judge, box.subset.drivelines);
  const slack = box.slack ?? judge.exact;
  const looked = until - box.seen;
  for (let row = box.seen + 1; row <= until; row++) if (drawFails(judge, box.subset.drivelines, row, slack)) box.failed++;
  box.seen = until;
  // A box inherits what its parent was sure of.
  box.key.fails = Math.max(box.key.fails, box.failed);
  return looked;
}

/** The box cut in two along its widest side. */
function halves({ low, high }: Box): readonly (readonly [Int32Array, Int32Array])[] {
  let widest = 0;
  low.forEach((place, k) => {
    if ((high[k] as number) - place > (high[widest] as number) - (low[widest] as number)) widest = k;
  });
  const middle = ((low[widest] as number) + (high[widest] as number)) >> 1;
  const firstHigh = high.slice();
  firstHigh[widest] = middle;
  const secondLow = low.slice();
  secondLow[widest] = middle + 1;
  return [
    [low, firstHigh],
    [secondLow, high],
  ];
}
