/**
 * A result and how sure we are of it, in the unit of its place (SI and radians inside the engine).
 * value: what the best-estimate inputs give, never a Monte Carlo mean. u: standard uncertainty. low, high: 95 % interval.
 */
export interface Estimate {
  readonly value: number;
  readonly u: number;
  readonly low: number;
  readonly high: number;
}

/** An interval wholly outside a limit is over or under, wholly inside is within, anything else is uncertain. */
export type LimitVerdict = "within" | "over" | "under" | "uncertain";

/** not-gauged: nothing to judge. withheld: a stop finding stands, so the numbers are not road angles. */
export type Verdict = LimitVerdict | "not-gauged" | "withheld";
