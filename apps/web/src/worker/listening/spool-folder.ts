/** Where the samples of recordings at work lie among the files that only this app sees: a folder for each. */
export const SPOOL_FOLDER = "listening";

/** What of a browser is needed; outside a secure context it has none of it. */
export interface SpoolDevice {
  readonly storage?: StorageManager | undefined;
  readonly locks?: LockManager | undefined;
}

/** Held for as long as a folder is at work, and let go by the browser when its tab is killed. */
export const lockOf = (folder: string): string => `halfturn-listening-${folder}`;

/** Waits between the tries to remove a folder: a browser lets go of the lock of a tab that died a moment before it lets go of its files. */
const AGAIN_MS = [100, 300, 1000, 3000] as const;

/** Removes what tabs left behind that were killed while they listened. Never fails: it is tried again at the next start. */
export async function sweepSpools({ storage, locks }: SpoolDevice = navigator): Promise<void> {
  if (!storage?.getDirectory || !locks) return;
  try {
    const all = await (await storage.getDirectory()).getDirectoryHandle(SPOOL_FOLDER);
    const names: string[] = [];
    for await (const name of (all as unknown as { readonly keys: () => AsyncIterable<string> }).keys()) names.push(name);
    // Side by side: one that is not let go of keeps no other.
    await Promise.all(names.map((name) => locks.request(lockOf(name), { ifAvailable: true }, async (lock) => lock && remove(all, name))));
  } catch {
    // Nothing was ever put there, or the browser refuses such files in a private window.
  }
}

async function remove(all: FileSystemDirectoryHandle, name: string): Promise<void> {
  for (const wait of [0, ...AGAIN_MS]) {
    await new Promise((done) => setTimeout(done, wait));
    try {
      return await all.removeEntry(name, { recursive: true });
    } catch (cause) {
      if ((cause as DOMException).name === "NotFoundError") return;
    }
  }
}
