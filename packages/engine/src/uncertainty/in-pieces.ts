import type { PausedWork } from "./long-work.js";

/** Runs work that yields between its pieces, with the share done where it knows it, and pauses after each. Rejects with the signal's own reason when stopped. */
export async function inPieces<Result>(
  // biome-ignore lint/suspicious/noConfusingVoidType: work that cannot say how far it is yields nothing
  steps: Generator<number | void, Result>,
  { signal, onProgress, pause }: PausedWork,
): Promise<Result> {
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    signal?.throwIfAborted();
    if (typeof step.value === "number") onProgress?.(step.value);
    await pause?.();
    signal?.throwIfAborted();
  }
}

/** Work as a part of a longer one: its share of progress, 0 to 1, becomes `from` to `from` + `share`. */
export function* scaledSteps<Result>(steps: Generator<number, Result>, from: number, share: number): Generator<number, Result> {
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    yield from + share * step.value;
  }
}

/** How a part of long work is watched and stopped: its share of progress, 0 to 1, becomes `from` to `to` of the whole. */
export const partOfWork = <Work extends PausedWork>(work: Work, from: number, to: number): Work => ({
  ...work,
  onProgress: work.onProgress && ((share: number) => work.onProgress?.(from + share * (to - from))),
});
