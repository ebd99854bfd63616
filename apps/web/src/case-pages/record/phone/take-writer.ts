import type { TakeChunk, TakeHead, TakeStore } from "./take-store.js";

/** Writes one take, chunk by chunk. */
export interface TakeWriter {
  readonly append: (chunk: TakeChunk) => void;
  /** Everything that was appended, once it is written. */
  readonly whole: () => Promise<readonly TakeChunk[]>;
  readonly drop: () => Promise<void>;
  /** Resolves when nothing is being written any more. */
  readonly written: () => Promise<void>;
}

/** A take in the store; from the first chunk on that the store refuses the rest stays in memory, so that it costs the reload but not the recording. */
export function newTakeWriter(store: TakeStore, head: TakeHead): TakeWriter {
  const inMemory: TakeChunk[] = [];
  let place = 0;
  let isRefused = false;
  const refuse = (): void => {
    isRefused = true;
  };
  let writing: Promise<void> = store.begin(head).catch(refuse);
  return {
    append: (chunk) => {
      writing = writing.then(async () => {
        if (!isRefused) await store.append(head.id, place, chunk).catch(refuse);
        if (isRefused) inMemory.push(chunk);
        place += 1;
      });
    },
    whole: async () => {
      await writing;
      const stored = await store.chunks(head.id).catch(() => []);
      return [...stored, ...inMemory];
    },
    drop: async () => {
      await writing;
      await store.drop(head.id).catch(() => undefined);
    },
    written: () => writing,
  };
}
