/** A closed interval, low <= high, in the unit of what it bounds. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** Coverage probability of every interval the product states, unless it says otherwise. */
export const DEFAULT_COVERAGE = 0.95;
