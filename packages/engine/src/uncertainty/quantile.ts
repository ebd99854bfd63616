import quickselect from "quickselect";
import { DEFAULT_COVERAGE, type Interval } from "./interval.js";

/** quickselect is typed for plain arrays but only indexes and swaps. */
const select = (sample: Float64Array, rank: number, left: number, right: number): void =>
  quickselect(sample as unknown as number[], rank, left, right);

/** JCGM 101:2008, 7.7: how many of `size` ordered values a coverage interval spans. */
function spanOf(size: number, coverage: number): number {
  if (!(coverage > 0 && coverage < 1)) throw new RangeError(`a coverage must lie between 0 and 1, got ${coverage}`);
  const exact = coverage * size;
  // The product of a decimal fraction and a whole number may miss the whole number by rounding only.
  const whole = Math.round(exact);
  const span = Math.abs(exact - whole) < 1e-9 * size ? whole : Math.floor(exact + 0.5);
  if (size < 2 || span >= size) throw new RangeError(`${size} values are too few for a coverage of ${coverage}`);
  return Math.max(1, span);
}

/**
 * The p-quantiles of a sample, in the order asked for. Reorders the sample in place; several quantiles share the work.
 * p in [0, 1]; the p-quantile is the value of rank ceil(p size), the first of the ordered values whose share reaches p, so 0 is the least and 1 the greatest.
 * The values must be finite. Throws RangeError for an empty sample or a p outside [0, 1].
 * Source: inverse of the empirical distribution function (Hyndman and Fan, "Sample quantiles in statistical packages", Am. Stat. 50(4), 1996, definition 1).
 */
export function quantiles(sample: Float64Array, probabilities: readonly number[]): readonly number[] {
  if (sample.length === 0) throw new RangeError("an empty sample has no quantiles");
  const ranks = probabilities.map((p) => {
    if (!(p >= 0 && p <= 1)) throw new RangeError(`a quantile must lie in [0, 1], got ${p}`);
    return Math.max(0, Math.ceil(p * sample.length - 1e-9 * sample.length) - 1);
  });
  selectRanks(sample, ranks);
  return ranks.map((rank) => sample[rank] as number);
}

/** Puts every asked rank of the sample into its place: each selection leaves less to search for the next. */
function selectRanks(sample: Float64Array, ranks: readonly number[]): void {
  const ascending = [...new Set(ranks)].sort((a, b) => a - b);
  let left = 0;
  for (const rank of ascending) {
    select(sample, rank, left, sample.length - 1);
    left = rank + 1;
  }
}

/**
 * The probabilistically symmetric coverage interval of a sample: as much probability below it as above it.
 * Reorders the sample in place; the values must be finite. Throws RangeError when the sample is too small for the coverage.
 * Source: JCGM 101:2008, 7.7 (with q = coverage x size: [y(r), y(r+q)], r = (size - q)/2 or its next half).
 */
export function symmetricInterval(sample: Float64Array, coverage: number = DEFAULT_COVERAGE): Interval {
  const span = spanOf(sample.length, coverage);
  const rank = Math.floor((sample.length - span + 1) / 2);
  selectRanks(sample, [rank - 1, rank + span - 1]);
  return { low: sample[rank - 1] as number, high: sample[rank + span - 1] as number };
}

/**
 * The shortest coverage interval of a sample. Reorders the sample in place; the values must be finite.
 * Of several equally short the lowest is taken. Throws RangeError when the sample is too small for the coverage.
 * Source: JCGM 101:2008, 7.7.
 */
export function shortestInterval(sample: Float64Array, coverage: number = DEFAULT_COVERAGE): Interval {
  const size = sample.length;
  const span = spanOf(size, coverage);
  sortTails(sample, size - span);
  let best = 0;
  let width = Number.POSITIVE_INFINITY;
  for (let r = 0; r + span < size; r++) {
    const candidate = (sample[r + span] as number) - (sample[r] as number);
    if (candidate < width) {
      width = candidate;
      best = r;
    }
  }
  return { low: sample[best] as number, high: sample[best + span] as number };
}

/** Orders the `count` least and the `count` greatest values; the middle, which no interval end can reach, stays as it is. */
function sortTails(sample: Float64Array, count: number): void {
  const size = sample.length;
  if (2 * count >= size) {
    sample.sort();
    return;
  }
  select(sample, count, 0, size - 1);
  select(sample, size - count - 1, count, size - 1);
  sample.subarray(0, count).sort();
  sample.subarray(size - count).sort();
}
