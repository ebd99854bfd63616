import type { LimitVerdict } from "../analysis/estimate.js";
import type { Interval } from "./interval.js";

/** What a quantity is judged by, in its unit; an end that is missing does not bind. */
export interface LimitBounds {
  readonly minimum?: number | undefined;
  readonly maximum?: number | undefined;
}

/**
 * An interval against a limit: wholly above the maximum is over, wholly below the minimum is under, wholly inside is within, anything else is uncertain.
 * The limit itself still counts as inside. An interval with an end that is not a number is uncertain.
 * Nothing is claimed where the interval straddles the limit (guarded acceptance and guarded rejection, JCGM 106:2012, section 8, from memory).
 */
export function verdictOf(interval: Interval, limit: LimitBounds): LimitVerdict {
  const minimum = limit.minimum ?? Number.NEGATIVE_INFINITY;
  const maximum = limit.maximum ?? Number.POSITIVE_INFINITY;
  if (interval.low > maximum) return "over";
  if (interval.high < minimum) return "under";
  return interval.low >= minimum && interval.high <= maximum ? "within" : "uncertain";
}
