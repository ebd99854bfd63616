/** Keeps the screen on, since a device that sleeps senses nothing. Returns what lets it sleep again; does nothing where the browser cannot. */
export async function screenAwake(): Promise<() => void> {
  const { wakeLock } = navigator as { readonly wakeLock?: WakeLock };
  const lock = await wakeLock?.request("screen").catch(() => null);
  return () => void lock?.release();
}

/** The same, for what was begun before; null where the page was left while the browser was asked, and then the screen may sleep. */
export async function awakeUnlessLeft(isLeft: () => boolean, awake = screenAwake): Promise<(() => void) | null> {
  const sleep = await awake();
  if (!isLeft()) return sleep;
  sleep();
  return null;
}
