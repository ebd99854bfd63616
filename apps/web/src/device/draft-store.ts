/** Where a browser keeps texts for as long as a window is open. */
export type DraftStorage = Pick<Storage, "getItem" | "setItem" | "removeItem">;

/** What was typed and is not in a case yet, by place. */
export interface DraftStore {
  readonly read: (key: string) => unknown;
  /** null takes it away. */
  readonly write: (key: string, draft: unknown) => void;
}

const PREFIX = "halfturn-draft:";

/**
 * Drafts in a storage that survives a reload, and in memory besides: a storage that is refused or full costs no more than that. Quiet, since nobody can do anything
 * about it while typing.
 */
export function newDraftStore(storage: () => DraftStorage): DraftStore {
  const memory = new Map<string, unknown>();
  const quietly = <Made>(use: (storage: DraftStorage) => Made): Made | null => {
    try {
      return use(storage());
    } catch {
      return null;
    }
  };
  return {
    read: (key) => memory.get(key) ?? quietly((kept) => JSON.parse(kept.getItem(PREFIX + key) ?? "null") as unknown),
    write: (key, draft) => {
      if (draft === null) memory.delete(key);
      else memory.set(key, draft);
      // Whatever was there before is out of date, also where the new one does not fit.
      quietly((kept) => kept.removeItem(PREFIX + key));
      if (draft !== null) quietly((kept) => kept.setItem(PREFIX + key, JSON.stringify(draft)));
    },
  };
}
