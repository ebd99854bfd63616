/** How a caller watches and stops long work. An AbortSignal fits `signal`; `throwIfAborted` throws the caller's own reason. */
export interface LongWork {
  readonly signal?: { throwIfAborted(): void } | undefined;
  /** Called now and then with the share done, rising to 1. */
  readonly onProgress?: ((share: number) => void) | undefined;
}
