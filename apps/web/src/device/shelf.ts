import type { Case } from "@halfturn/casefile";
import { type DeviceCase, type DeviceStore, firstRecord, type Origin } from "./device-case.js";
import { type OpenCase, openCase } from "./open-case.js";

/** The cases of this device, each opened once: the page and what sends it speak of the same one. */
export interface Shelf {
  readonly open: (id: string) => Promise<OpenCase | null>;
  /** Puts a case on the device that was not there; the one that is there stays where there is one. */
  readonly add: (document: Case, from?: Origin) => Promise<OpenCase>;
  readonly list: () => Promise<readonly DeviceCase[]>;
  /** How many cases have something to be sent, by what is kept. */
  readonly waiting: () => Promise<number>;
  /** Calls whenever any case of the device changed. */
  readonly subscribe: (changed: () => void) => () => void;
}

export interface ShelfDependencies {
  readonly store: DeviceStore;
  readonly now: () => number;
  readonly onWaiting: (id: string) => void;
}

export function newShelf({ store, now, onWaiting }: ShelfDependencies): Shelf {
  const opened = new Map<string, Promise<OpenCase | null>>();
  const listeners = new Set<() => void>();
  const tell = (): void => {
    for (const listener of listeners) listener();
  };
  const open = (id: string): Promise<OpenCase | null> => {
    const known = opened.get(id);
    if (known) return known;
    const opening = openCase(id, { store, now, onWaiting }).then((found) => {
      if (found) found.subscribe(tell);
      else opened.delete(id);
      return found;
    });
    opened.set(id, opening);
    return opening;
  };
  store.watch((id) => {
    void opened.get(id)?.then((open) => open?.reread());
    tell();
  });
  return {
    open,
    add: async (document, from) => {
      const known = await open(document.id);
      if (known) return known;
      const record = firstRecord(document, new Date(now()).toISOString(), from);
      await store.write(record);
      const added = (await open(document.id)) as OpenCase;
      tell();
      if (record.waiting) onWaiting(record.id);
      return added;
    },
    list: async () => {
      const kept = await store.all();
      // What is open is newer in memory than in the store.
      return Promise.all(kept.map(async (record) => (await opened.get(record.id))?.record() ?? record));
    },
    waiting: () => store.waiting(),
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
