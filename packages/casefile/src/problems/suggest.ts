import { distance } from "fastest-levenshtein";

/** Up to this many inserted, dropped or changed characters count as a slip of the same word. */
export const SLIP_DISTANCE = 2;

/** The nearest of the known words within a slip of what was written; the first of equals. null where none is near. */
export function nearest(written: string, known: readonly string[]): string | null {
  let best: string | null = null;
  let least = SLIP_DISTANCE + 1;
  for (const word of known) {
    if (Math.abs(word.length - written.length) >= least) continue;
    const far = distance(written, word);
    if (far < least) {
      best = word;
      least = far;
    }
  }
  return best;
}

/** `{ suggestion }` to be spread into the params of a problem, or nothing. */
export function suggestionFor(written: string, known: readonly string[]): { readonly suggestion?: string } {
  const suggestion = nearest(written, known);
  // Two short words can be within a slip of one another and share no letter: 6 is no slip of 5.
  if (suggestion === null || distance(written, suggestion) >= Math.max(written.length, suggestion.length)) return {};
  return { suggestion };
}
