/** How a caller watches and stops long work. An AbortSignal fits `signal`; `throwIfAborted` throws the caller's own reason. */
export interface LongWork {
  readonly signal?: { throwIfAborted(): void } | undefined;
  /** Called now and then with the share done, rising to 1. */
  readonly onProgress?: ((share: number) => void) | undefined;
}

/**
 * Gives the host a turn between pieces of work, so that a button pressed meanwhile is seen: `() => new Promise((resolve) => setTimeout(resolve))`.
 * The engine knows no timer of its own; without a pause only promises get their turn.
 */
export type Pause = () => Promise<void>;

/** Long work with a pause between its pieces. */
export interface PausedWork extends LongWork {
  readonly pause?: Pause | undefined;
}
