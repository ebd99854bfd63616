import type { VehicleSide } from "@halfturn/casefile";
import { useSyncExternalStore } from "react";
import type { ShaftEnd } from "../model/ends.js";

/** What stands on the page for one step before it is kept. It stays there when one looks at another place meanwhile. */
export interface Draft {
  readonly text: string;
  readonly chosen: ShaftEnd | null;
  readonly isFace: boolean | null;
  readonly side: VehicleSide | null;
  /** The reading that is taken again. */
  readonly changing: number | null;
}

export const EMPTY: Draft = { text: "", chosen: null, isFace: null, side: null, changing: null };

/** The drafts of one gauging, by the keys of their steps. They stand outside of what is drawn: a digit redraws its own place, and nothing else. */
export interface Drafts {
  readonly of: (step: string) => Draft;
  /** null where it was kept, or taken back. */
  readonly put: (step: string, draft: Draft | null) => void;
  readonly subscribe: (changed: () => void) => () => void;
}

export function newDrafts(): Drafts {
  const held = new Map<string, Draft>();
  const listeners = new Set<() => void>();
  return {
    of: (step) => held.get(step) ?? EMPTY,
    put: (step, draft) => {
      if (draft) held.set(step, draft);
      else held.delete(step);
      for (const listener of listeners) listener();
    },
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
  };
}

/** The draft of a step as it is now. */
export const useDraft = (drafts: Drafts, step: string): Draft => useSyncExternalStore(drafts.subscribe, () => drafts.of(step));
