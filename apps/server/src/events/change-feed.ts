/** Tells everybody who listens that the store has changed; what changed they read from the store, each from where it stands. */
export interface ChangeFeed {
  readonly announce: () => void;
  /** Kept when something was announced, the feed was closed, the signal was given, or the time is over. */
  readonly next: (timeoutMs: number, signal: AbortSignal) => Promise<void>;
  readonly listeners: () => number;
  /** Wakes everybody for good. */
  readonly close: () => void;
  readonly closed: () => boolean;
}

export function changeFeed(): ChangeFeed {
  const waiting = new Set<() => void>();
  let closed = false;
  const wakeAll = (): void => {
    for (const wake of [...waiting]) wake();
  };
  return {
    announce: wakeAll,
    next: (timeoutMs, signal) =>
      new Promise((resolve) => {
        if (closed || signal.aborted) return resolve();
        const wake = (): void => {
          clearTimeout(timer);
          waiting.delete(wake);
          signal.removeEventListener("abort", wake);
          resolve();
        };
        const timer = setTimeout(wake, timeoutMs);
        waiting.add(wake);
        signal.addEventListener("abort", wake);
      }),
    listeners: () => waiting.size,
    close: () => {
      closed = true;
      wakeAll();
    },
    closed: () => closed,
  };
}
