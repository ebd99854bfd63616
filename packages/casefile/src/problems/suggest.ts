import { distance } from "fastest-levenshtein";

/** Up to this many inserted, dropped or changed characters count as a slip of the same word. */
export const SLIP_DISTANCE = 2;

/** Units that stand at the end of keys; left out, they take a key further off than a slip. */
const UNIT = /(?:Deg|Mm|Rpm|Kmh)$/;

/** The nearest of the known words within a slip of what was written, or the one that it is without its unit; the first of equals. null where none is near. */
export function nearest(written: string, known: readonly string[]): string | null {
  const withUnit = known.find((word) => UNIT.test(word) && word.replace(UNIT, "").toLowerCase() === written.toLowerCase());
  if (withUnit !== undefined) return withUnit;
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

/** The one word that begins as written: `L` for left, `driven` for driven-end. */
function onlyBeginningWith(written: string, known: readonly string[]): string | null {
  const fits = written === "" ? [] : known.filter((word) => word.toLowerCase().startsWith(written.toLowerCase()));
  return fits.length === 1 ? (fits[0] as string) : null;
}

/** `{ suggestion }` to be spread into the params of a problem, or nothing. */
export function suggestionFor(written: string, known: readonly string[]): { readonly suggestion?: string } {
  const suggestion = onlyBeginningWith(written, known) ?? nearest(written, known);
  // Two short words can be within a slip of one another and share no letter: 6 is no slip of 5.
  if (suggestion === null) return {};
  if (
    !suggestion.toLowerCase().startsWith(written.toLowerCase()) &&
    distance(written, suggestion) >= Math.max(written.length, suggestion.length)
  )
    return {};
  return { suggestion };
}
