import { useLayoutEffect, useRef, useState } from "react";
import { useMoveDrafts } from "./kept-draft.js";
import { renamedParts } from "./renamed-parts.js";

/**
 * What is half typed in a row that is known by its name goes with it when it is renamed, whoever does that: its field, an undo, another device. Gives how often that
 * was; a field that is drawn anew for each has the draft that came to it.
 */
export function useRenamedDrafts(parts: readonly string[]): number {
  const moveDrafts = useMoveDrafts();
  const known = useRef(parts);
  const [renames, setRenames] = useState(0);
  // Before it is painted, so that no field is seen without its text.
  useLayoutEffect(() => {
    const renamed = renamedParts(known.current, parts);
    known.current = parts;
    for (const [from, to] of renamed) moveDrafts(from, to);
    if (renamed.length > 0) setRenames((before) => before + 1);
  });
  return renames;
}
