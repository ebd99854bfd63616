import type { LongWork } from "@halfturn/engine/uncertainty";

/** Lets a message in between two pieces of work, so that a stop is seen within a piece. */
export const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/** Runs work that yields the share done, and listens for a stop between its pieces. Rejects with the signal's reason. */
export async function inPieces<Value>(steps: Generator<number, Value>, { signal, onProgress }: LongWork): Promise<Value> {
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    onProgress?.(step.value);
    await pause();
    signal?.throwIfAborted();
  }
}

/** A share of longer work. */
export const partOf = ({ signal, onProgress }: LongWork, from: number, to: number): LongWork => ({
  signal,
  onProgress: onProgress && ((share) => onProgress(from + share * (to - from))),
});
