import type { Case } from "@halfturn/casefile";
import type { DeviceCase, DeviceStore } from "./device-case.js";
import { type OpenCase, openCase } from "./open-case.js";

/** The cases of this device, each opened once: the page and what sends it speak of the same one. */
export interface Shelf {
  readonly open: (id: string) => Promise<OpenCase | null>;
  /** Puts a case on the device that was not there; the one that is there stays where there is one. */
  readonly add: (document: Case, from?: { readonly base: Case; readonly revision: number }) => Promise<OpenCase>;
  readonly list: () => Promise<readonly DeviceCase[]>;
}

export interface ShelfDependencies {
  readonly store: DeviceStore;
  readonly now: () => number;
}

export function newShelf({ store, now }: ShelfDependencies): Shelf {
  const opened = new Map<string, Promise<OpenCase | null>>();
  const open = (id: string): Promise<OpenCase | null> => {
    const known = opened.get(id);
    if (known) return known;
    const opening = openCase(id, { store, now }).then((found) => {
      if (!found) opened.delete(id);
      return found;
    });
    opened.set(id, opening);
    return opening;
  };
  return {
    open,
    add: async (document, from) => {
      const known = await open(document.id);
      if (known) return known;
      await store.write({
        id: document.id,
        document,
        base: from?.base ?? null,
        revision: from?.revision ?? null,
        waiting: from ? 0 : 1,
        putAway: 0,
        changedAt: new Date(now()).toISOString(),
        undone: 0,
      });
      return (await open(document.id)) as OpenCase;
    },
    list: () => store.all(),
  };
}
