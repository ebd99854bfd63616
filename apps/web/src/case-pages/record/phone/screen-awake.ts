/** What of the page tells whether it is seen. */
type Sight = Pick<Document, "visibilityState" | "addEventListener" | "removeEventListener">;

/**
 * Keeps the screen on, since a device that sleeps senses nothing. The browser lets go of it as soon as the page is hidden: it is asked again once the page is seen.
 * Returns what lets the screen sleep; does nothing where the browser cannot keep it on.
 */
export async function screenAwake(
  { wakeLock }: { readonly wakeLock?: Pick<WakeLock, "request"> } = navigator as { readonly wakeLock?: WakeLock },
  page: Sight = document,
): Promise<() => void> {
  let isOver = false;
  let lock: Pick<WakeLockSentinel, "release"> | null = null;
  const ask = async (): Promise<void> => {
    const before = lock;
    lock = (await wakeLock?.request("screen").catch(() => null)) ?? null;
    void before?.release();
    if (isOver) void lock?.release();
  };
  const seen = (): void => {
    if (page.visibilityState === "visible") void ask();
  };
  await ask();
  page.addEventListener("visibilitychange", seen);
  return () => {
    isOver = true;
    page.removeEventListener("visibilitychange", seen);
    void lock?.release();
  };
}

/** The same, for what was begun before; null where the page was left while the browser was asked, and then the screen may sleep. */
export async function awakeUnlessLeft(isLeft: () => boolean, awake: () => Promise<() => void> = screenAwake): Promise<(() => void) | null> {
  const sleep = await awake();
  if (!isLeft()) return sleep;
  sleep();
  return null;
}
