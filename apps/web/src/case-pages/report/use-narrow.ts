import { useSyncExternalStore } from "react";

const query = (): MediaQueryList => window.matchMedia("(max-width: 40rem)");

function watch(changed: () => void): () => void {
  const list = query();
  list.addEventListener("change", changed);
  return () => list.removeEventListener("change", changed);
}

/** Whether the screen is as narrow as a phone held upright. */
export const useNarrow = (): boolean => useSyncExternalStore(watch, () => query().matches);
