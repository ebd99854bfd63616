/** Enough for an interval's end to hold to two digits, as on paper and on the command line. */
export const FULL_DRAWS = 20_000;
/** Few enough for an answer while somebody types. */
export const QUICK_DRAWS = 400;
/** How long nothing may have changed before the full answer is worked out. */
export const SETTLED_MS = 250;
