/** Gives the host a turn, so that a button pressed meanwhile is seen. */
export type Pause = () => Promise<void>;

/** The host's own timer where there is one; without it only promises get their turn. */
export const hostPause: Pause = () =>
  new Promise((resolve) => {
    const { setTimeout: later } = globalThis as { readonly setTimeout?: (run: () => void, ms: number) => unknown };
    if (later) later(resolve, 0);
    else resolve();
  });
