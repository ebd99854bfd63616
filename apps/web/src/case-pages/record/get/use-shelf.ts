import { useCallback, useEffect, useState } from "react";
import { type FileShelf, openShelf } from "./file-shelf.js";

export interface KeptFiles {
  /** Names of the recordings that are at hand. */
  readonly names: readonly string[];
  /** Whether they outlive the page; null until that is known. */
  readonly lasting: boolean | null;
  /** Whether it outlives the page. */
  readonly keep: (name: string, content: Blob) => Promise<boolean>;
  readonly open: (name: string) => Promise<Blob | null>;
  readonly remove: (name: string) => Promise<void>;
}

/** The recordings of a case on this device; in memory where the browser keeps no files. */
export function useShelf(caseId: string): KeptFiles {
  const [shelf, setShelf] = useState<FileShelf | null | undefined>(undefined);
  const [stored, setStored] = useState<readonly string[]>([]);
  const [inMemory, setInMemory] = useState<ReadonlyMap<string, Blob>>(new Map());
  useEffect(() => {
    let isWanted = true;
    void openShelf(caseId).then(async (opened) => {
      const names = opened ? await opened.list() : [];
      if (!isWanted) return;
      setShelf(opened);
      setStored(names);
    });
    return () => {
      isWanted = false;
    };
  }, [caseId]);
  const keep = useCallback(
    async (name: string, content: Blob): Promise<boolean> => {
      const done = shelf ? await shelf.put(name, content) : false;
      if (done && shelf) setStored(await shelf.list());
      else setInMemory((before) => new Map(before).set(name, content));
      return done;
    },
    [shelf],
  );
  const open = useCallback(
    async (name: string): Promise<Blob | null> => inMemory.get(name) ?? (await shelf?.get(name)) ?? null,
    [shelf, inMemory],
  );
  const remove = useCallback(
    async (name: string): Promise<void> => {
      setInMemory((before) => new Map([...before].filter(([other]) => other !== name)));
      await shelf?.remove(name);
      setStored(shelf ? await shelf.list() : []);
    },
    [shelf],
  );
  const names = [...new Set([...stored, ...inMemory.keys()])];
  return { names, lasting: shelf === undefined ? null : shelf !== null && inMemory.size === 0, keep, open, remove };
}
