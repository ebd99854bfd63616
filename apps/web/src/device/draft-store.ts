/** Where a browser keeps texts for as long as a window is open. */
export type DraftStorage = Pick<Storage, "getItem" | "setItem" | "removeItem" | "key" | "length">;

/** What was typed and is not in a case yet, by place. */
export interface DraftStore {
  readonly read: (key: string) => unknown;
  /** null takes it away. */
  readonly write: (key: string, draft: unknown) => void;
  /** Everything below one place goes below another; null takes it away. */
  readonly move: (from: string, to: string | null) => void;
}

const PREFIX = "halfturn-draft:";

const keysOf = (kept: DraftStorage): readonly string[] =>
  Array.from({ length: kept.length }, (_, k) => kept.key(k) ?? "").flatMap((key) =>
    key.startsWith(PREFIX) ? [key.slice(PREFIX.length)] : [],
  );

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
  const read = (key: string): unknown => memory.get(key) ?? quietly((kept) => JSON.parse(kept.getItem(PREFIX + key) ?? "null") as unknown);
  const write = (key: string, draft: unknown): void => {
    if (draft === null) memory.delete(key);
    else memory.set(key, draft);
    // Whatever was there before is out of date, also where the new one does not fit.
    quietly((kept) => kept.removeItem(PREFIX + key));
    if (draft !== null) quietly((kept) => kept.setItem(PREFIX + key, JSON.stringify(draft)));
  };
  return {
    read,
    write,
    move: (from, to) => {
      const keys = new Set([...memory.keys(), ...(quietly(keysOf) ?? [])]);
      for (const key of keys) {
        if (!key.startsWith(`${from}/`)) continue;
        if (to !== null) write(to + key.slice(from.length), read(key));
        write(key, null);
      }
    },
  };
}
