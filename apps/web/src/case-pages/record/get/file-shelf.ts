/** Recordings of one case that are kept on this device, in files that only this app sees. */
export interface FileShelf {
  readonly list: () => Promise<readonly string[]>;
  /** false where there is no room for it, or the browser does not write such files. */
  readonly put: (name: string, content: Blob) => Promise<boolean>;
  readonly get: (name: string) => Promise<Blob | null>;
  readonly remove: (name: string) => Promise<void>;
}

const FOLDER = "recordings";

/** Names of cases and files may hold what a folder's name may not. */
const safe = (name: string): string => encodeURIComponent(name);

/** The shelf of a case; null where the browser keeps no such files (it does in secure contexts only). */
export async function openShelf(caseId: string): Promise<FileShelf | null> {
  const { storage } = navigator as { readonly storage?: StorageManager };
  if (!storage?.getDirectory) return null;
  try {
    const root = await storage.getDirectory();
    const all = await root.getDirectoryHandle(FOLDER, { create: true });
    return shelfIn(await all.getDirectoryHandle(safe(caseId), { create: true }));
  } catch {
    // A private window may have the call and refuse it.
    return null;
  }
}

interface Listed {
  readonly keys: () => AsyncIterable<string>;
}

function shelfIn(folder: FileSystemDirectoryHandle): FileShelf {
  return {
    list: async () => {
      const names: string[] = [];
      for await (const name of (folder as unknown as Listed).keys()) names.push(decodeURIComponent(name));
      return names.sort();
    },
    put: async (name, content) => {
      try {
        const file = await folder.getFileHandle(safe(name), { create: true });
        const writing = await file.createWritable();
        await writing.write(content);
        await writing.close();
        return true;
      } catch {
        await folder.removeEntry(safe(name)).catch(() => undefined);
        return false;
      }
    },
    get: async (name) => {
      try {
        return await (await folder.getFileHandle(safe(name))).getFile();
      } catch {
        return null;
      }
    },
    remove: (name) => folder.removeEntry(safe(name)).catch(() => undefined),
  };
}
