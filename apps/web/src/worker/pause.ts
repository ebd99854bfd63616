/** A browser draws a timer out to 4 ms, and pieces of work may take less: so much of them goes by between two pauses. */
const WORK_MS = 16;
let rested = 0;

/** Lets a message in between two pieces of work, so that a stop is seen within a piece or two. */
export async function pause(): Promise<void> {
  if (performance.now() - rested < WORK_MS) return;
  await new Promise((resolve) => setTimeout(resolve));
  rested = performance.now();
}
