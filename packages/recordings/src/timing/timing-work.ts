import type { LongWork } from "@halfturn/engine/uncertainty";

/** How long work on samples in memory is watched and stopped. */
export interface TimingWork extends LongWork {
  /** Lets others run, a timer's turn: a signal can only be raised while this waits. */
  readonly pause?: (() => Promise<void>) | undefined;
}

/** Does work that comes in pieces, with a pause after each. Rejects with the signal's reason. */
export async function inPieces<Value>(steps: Generator<void, Value>, { signal, pause }: TimingWork): Promise<Value> {
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    await pause?.();
    signal?.throwIfAborted();
  }
}
