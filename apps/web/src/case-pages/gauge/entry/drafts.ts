import type { VehicleSide } from "@halfturn/casefile";
import { useSyncExternalStore } from "react";
import type { DraftStore } from "../../../device/draft-store.js";
import { hasKeys } from "../../../device/kept-draft.js";
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

const isOneOf = (value: unknown, ...those: readonly unknown[]): boolean => value === null || those.includes(value);

const isDraft = (value: unknown): value is Draft =>
  hasKeys(value, "text", "chosen", "isFace", "side", "changing") &&
  typeof value.text === "string" &&
  isOneOf(value.chosen, "source-end", "driven-end") &&
  isOneOf(value.isFace, true, false) &&
  isOneOf(value.side, "left", "right") &&
  (value.changing === null || Number.isInteger(value.changing));

/** The drafts of one gauging, by the keys of their steps. They stand outside of what is drawn: a digit redraws its own place, and nothing else. */
export interface Drafts {
  readonly of: (step: string) => Draft;
  /** null where it was kept, or taken back. */
  readonly put: (step: string, draft: Draft | null) => void;
  readonly subscribe: (changed: () => void) => () => void;
}

/** `kept` outlasts the page; what it holds counts where it still fits what was read meanwhile. */
export function newDrafts(kept: Pick<DraftStore, "read" | "write">, fits: (step: string, draft: Draft) => boolean): Drafts {
  const held = new Map<string, Draft>();
  const listeners = new Set<() => void>();
  return {
    of: (step) => {
      const known = held.get(step);
      if (known) return known;
      const left = kept.read(step);
      const draft = isDraft(left) && fits(step, left) ? left : EMPTY;
      held.set(step, draft);
      return draft;
    },
    put: (step, draft) => {
      held.set(step, draft ?? EMPTY);
      kept.write(step, draft);
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
