/** Enough for an interval's end to hold to two digits, as on paper and on the command line. */
export const FULL_DRAWS = 20_000;
/** Few enough for an answer while somebody types. */
export const QUICK_DRAWS = 400;
