import { suggestionFor } from "@halfturn/casefile";
import { ADJUSTER_KINDS, type Adjuster, AXLE_KINDS } from "@halfturn/engine/correction";
import type { Catalogue } from "@halfturn/words";

/** All that moves the axle, in one word. */
const AXLE = "axle";

export type KeptAdjusters =
  | { readonly ok: true; readonly keep: readonly string[] }
  | { readonly ok: false; readonly lines: readonly string[] };

/** What `--keep` means: adjusters by id, by kind (also one that the case has none of), or all of the axle's. An id that is also such a word means the adjuster. */
export function keptAdjusters(typed: readonly string[], adjusters: readonly Adjuster[], { terminal, numbers }: Catalogue): KeptAdjusters {
  const ids = adjusters.map(({ id }) => id);
  const allowed = [...new Set([...ids, ...ADJUSTER_KINDS, AXLE])];
  const lines = typed
    .filter((word) => !allowed.includes(word))
    .map((word) => {
      const near = suggestionFor(word, allowed).suggestion;
      return terminal.usage.keepUnknown(word, near === undefined ? "" : `"${near}"`, numbers.any(allowed));
    });
  if (lines.length > 0) return { ok: false, lines };
  return { ok: true, keep: typed.flatMap((word): readonly string[] => (word === AXLE && !ids.includes(AXLE) ? AXLE_KINDS : [word])) };
}
