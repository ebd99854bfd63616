import type { Abstained, Attribution, Contribution } from "./attribution.js";
import { columnOf } from "./contributions.js";
import type { Evidence } from "./evidence.js";
import { type PartOrderName, sameOrder } from "./order-lines.js";
import type { RunReading } from "./read-run.js";

/** Likelier than not. */
const LIKELY = 0.5;
/** An order that explains less of the vibration than this is not its cause, however sure it is that it is there (common practice, no source). */
const TOO_LITTLE = 0.05;
/** An order above half the rate that reaches this share of the largest one may well be larger: a filter nobody knows has weakened it. */
const LOUD = 0.2;
/** Odds of some 400 to 1. */
const SURELY = 6;
/** A folded order that hides behind a column in this share of its blocks cannot be told from it. */
const HIDDEN_SHARE = 0.5;

/** The order that is likelier than not and stands alone at its place; else why none is named, and which remain. */
export function verdictOf(
  evidence: Evidence,
  contributions: readonly Contribution[],
  none: number,
): Pick<Attribution, "verdict" | "abstained"> {
  const abstain = (reason: Abstained["reason"], between: readonly PartOrderName[]): Pick<Attribution, "verdict" | "abstained"> => ({
    verdict: null,
    abstained: { reason, between: between.map(({ part, order }) => ({ part, order })) },
  });
  if (none > LIKELY) return abstain("nothing", []);
  const [best] = evidence.readings;
  const tops = evidence.readings.map((run) => leaderOf(run));
  const [first] = tops;
  if (first === undefined) return abstain("nothing", []);
  const group = unpartedFrom(best, first);
  const together = group.reduce((sum, line) => sum + (probabilityOf(contributions, line) ?? 0), 0);
  const other = tops.slice(1).filter((line): line is PartOrderName => line !== undefined && group.every((one) => !sameOrder(one, line)));
  const alone = probabilityOf(contributions, first) ?? 0;
  const shadow = shadowOf(best, first);
  const reached = best.columns[columnOf(best, first)]?.shadow ?? null;
  const ownShare = best.columns[columnOf(best, first)]?.share ?? 0;
  const louder = best.folded.filter(({ presence, share }) => presence > SURELY && share > LOUD * ownShare);
  if (louder.length > 0)
    return abstain(
      "fold-back",
      louder.flatMap(({ lines }) => lines),
    );
  if (ownShare < TOO_LITTLE) return abstain("too-little", [first]);
  if (group.length > 1 && together > LIKELY) return abstain("coincidence", group);
  if (reached !== null && reached.presence <= SURELY) return abstain("fold-back", [first, ...reached.lines]);
  if (alone > LIKELY && shadow.length === 0)
    return { verdict: { part: first.part, order: first.order, probability: alone }, abstained: null };
  if (alone > LIKELY) return abstain("fold-back", [first, ...shadow]);
  if (other.length > 0) return abstain("loose-speed", [...group, ...other]);
  const likely = contributions.filter(({ probability }) => (probability ?? 0) > 0.1);
  return likely.length > 1 ? abstain("several", likely) : abstain("nothing", []);
}

const probabilityOf = (contributions: readonly Contribution[], line: PartOrderName): number | null | undefined =>
  contributions.find((one) => sameOrder(one, line))?.probability;

/** The likeliest line of a reading. */
function leaderOf({ columns }: RunReading): PartOrderName | undefined {
  const best = columns.reduce(
    (top, column) => (column.probability > top.probability ? column : top),
    columns[0] as (typeof columns)[number],
  );
  return best?.column.lines[0];
}

/** A line, and all that cannot be parted from it in this run. */
function unpartedFrom(run: RunReading, line: PartOrderName): readonly PartOrderName[] {
  const sharing = run.columns[columnOf(run, line)]?.column.lines ?? [line];
  const group: PartOrderName[] = [...sharing];
  for (const { first, second } of run.unparted)
    for (const [one, two] of [
      [first, second],
      [second, first],
    ] as const)
      if (sharing.some((own) => sameOrder(own, one)) && group.every((own) => !sameOrder(own, two))) group.push(two);
  return group;
}

/** Orders above half the rate that would have folded onto this line for most of the run. */
function shadowOf(run: RunReading, line: PartOrderName): readonly PartOrderName[] {
  const j = columnOf(run, line);
  return run.fit.folded.flatMap(({ column, hiddenBehind }) =>
    (hiddenBehind.get(j)?.length ?? 0) > HIDDEN_SHARE * run.fit.places.length ? column.lines : [],
  );
}
