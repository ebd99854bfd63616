/** Where the samples of recordings at work lie among the files that only this app sees: a folder for each. */
export const SPOOL_FOLDER = "listening";

/** What of a browser is needed; outside a secure context it has none of it. */
export interface SpoolDevice {
  readonly storage?: StorageManager | undefined;
  readonly locks?: LockManager | undefined;
}

/** Held for as long as a folder is at work, and let go by the browser when its tab is killed. */
export const lockOf = (folder: string): string => `halfturn-listening-${folder}`;

/** Removes what tabs left behind that were killed while they listened. Never fails: it is tried again at the next start. */
export async function sweepSpools({ storage, locks }: SpoolDevice = navigator): Promise<void> {
  if (!storage?.getDirectory || !locks) return;
  try {
    const all = await (await storage.getDirectory()).getDirectoryHandle(SPOOL_FOLDER);
    const names: string[] = [];
    for await (const name of (all as unknown as { readonly keys: () => AsyncIterable<string> }).keys()) names.push(name);
    for (const name of names)
      await locks.request(lockOf(name), { ifAvailable: true }, async (lock) => {
        if (lock !== null) await all.removeEntry(name, { recursive: true });
      });
  } catch {
    // Nothing was ever put there, or the browser refuses such files in a private window.
  }
}
