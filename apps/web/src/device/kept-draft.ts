import { createContext, useContext, useState } from "react";
import { type DraftStore, newDraftStore } from "./draft-store.js";

const drafts = newDraftStore(() => window.sessionStorage);

/** Whose drafts these are: the case and the step, and parts of the page within. */
export const DraftPlace = createContext("app");

interface Held<Draft> {
  readonly key: string | null;
  readonly draft: Draft | null;
}

/**
 * What somebody typed that is not in the case yet. It is still there after a change of page and after a reload, until it is set to null: when it was kept, or taken
 * back. `part` is its own name on the page, and null where it need not last; `isDraft` refuses what another version of the app left.
 */
export function useKeptDraft<Draft>(
  part: string | null,
  isDraft: (value: unknown) => value is Draft,
): readonly [Draft | null, (draft: Draft | null) => void] {
  const place = useContext(DraftPlace);
  const key = part === null ? null : `${place}/${part}`;
  const read = (): Held<Draft> => {
    const kept = key === null ? null : drafts.read(key);
    return { key, draft: isDraft(kept) ? kept : null };
  };
  const [held, hold] = useState(read);
  // A field that becomes another one has the draft of the other.
  const { draft } = held.key === key ? held : read();
  const keep = (next: Draft | null): void => {
    if (key !== null) drafts.write(key, next);
    hold({ key, draft: next });
  };
  return [draft, keep];
}

/** The drafts below one part of the page, for what keeps them outside of what is drawn. */
export function useDraftsOf(part: string): Pick<DraftStore, "read" | "write"> {
  const place = useContext(DraftPlace);
  return {
    read: (key) => drafts.read(`${place}/${part}/${key}`),
    write: (key, draft) => drafts.write(`${place}/${part}/${key}`, draft),
  };
}

/** What is half typed in a row of a list goes with it: to its new part where it is called otherwise by now, and away (null) where the row is taken out. */
export function useMoveDrafts(): (from: string, to: string | null) => void {
  const place = useContext(DraftPlace);
  return (from, to) => drafts.move(`${place}/${from}`, to === null ? null : `${place}/${to}`);
}

/** Whether a value from a storage has these keys; what they hold is for the caller to look at. */
export const hasKeys = <Key extends string>(value: unknown, ...keys: readonly Key[]): value is Readonly<Record<Key, unknown>> =>
  typeof value === "object" && value !== null && keys.every((key) => Object.hasOwn(value, key));
