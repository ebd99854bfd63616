/** Pieces of work may take less than a timer's own millisecond: so much of them goes by between two pauses. */
const WORK_MS = 10;
let rested = 0;

/** Lets an interrupt in between two pieces of work. A timer, not a promise: only that gives it a turn. */
export async function pause(): Promise<void> {
  if (performance.now() - rested < WORK_MS) return;
  await new Promise((resolve) => setTimeout(resolve));
  rested = performance.now();
}
