/** Keeps the screen on, since a device that sleeps senses nothing. Returns what lets it sleep again; does nothing where the browser cannot. */
export async function screenAwake(): Promise<() => void> {
  const { wakeLock } = navigator as { readonly wakeLock?: WakeLock };
  const lock = await wakeLock?.request("screen").catch(() => null);
  return () => void lock?.release();
}
