import type { SpoolDevice } from "./spool-folder.js";

/** Private files of a browser, in memory: as much of their interface as is used, with a bound on what all of them hold. */
export class PrivateFiles implements SpoolDevice {
  /** Paths of folders and files that are there. */
  readonly there = new Set<string>();
  readonly #files = new Map<string, { bytes: Uint8Array; isOpen: boolean }>();
  readonly #held = new Set<string>();
  readonly #room: number;

  constructor(room = Number.POSITIVE_INFINITY) {
    this.#room = room;
  }

  get storage(): StorageManager {
    return { getDirectory: async () => this.#folder("") } as unknown as StorageManager;
  }

  get locks(): LockManager {
    const request = async (name: string, options: unknown, work?: (lock: object | null) => unknown): Promise<unknown> => {
      const callback = work ?? (options as (lock: object | null) => unknown);
      if (this.#held.has(name)) return callback(null);
      this.#held.add(name);
      try {
        return await callback({ name });
      } finally {
        this.#held.delete(name);
      }
    };
    return { request } as unknown as LockManager;
  }

  /** As when a tab is killed: nothing is held any more, and what it wrote stays. */
  kill(): void {
    this.letGoOfLocks();
    this.letGoOfFiles();
  }

  letGoOfLocks(): void {
    this.#held.clear();
  }

  letGoOfFiles(): void {
    for (const file of this.#files.values()) file.isOpen = false;
  }

  #under(path: string): readonly string[] {
    return [...this.there].filter((one) => one === path || one.startsWith(`${path}/`));
  }

  #folder(path: string): object {
    const made = (kind: (at: string) => object) => async (name: string, options?: { readonly create?: boolean }) => {
      const at = `${path}/${name}`;
      if (!this.there.has(at) && options?.create !== true) throw new DOMException("not there", "NotFoundError");
      this.there.add(at);
      return kind(at);
    };
    return {
      getDirectoryHandle: made((at) => this.#folder(at)),
      getFileHandle: made((at) => ({ createSyncAccessHandle: async () => this.#opened(at) })),
      removeEntry: async (name: string) => {
        const all = this.#under(`${path}/${name}`);
        if (all.some((one) => this.#files.get(one)?.isOpen)) throw new DOMException("open", "NoModificationAllowedError");
        for (const one of all) {
          this.there.delete(one);
          this.#files.delete(one);
        }
      },
      keys: () => this.#names(path),
    };
  }

  async *#names(path: string): AsyncGenerator<string> {
    for (const one of this.#under(path)) if (one !== path && one.lastIndexOf("/") === path.length) yield one.slice(path.length + 1);
  }

  #opened(path: string): object {
    const file = { bytes: new Uint8Array(0), isOpen: true };
    this.#files.set(path, file);
    const checked = (): void => {
      if (!file.isOpen) throw new DOMException("closed", "InvalidStateError");
    };
    return {
      write: (bytes: Uint8Array, { at }: { readonly at: number }): number => {
        checked();
        const used = [...this.#files.values()].reduce((sum, one) => sum + one.bytes.length, 0) - file.bytes.length;
        if (used + at + bytes.length > this.#room) throw new DOMException("full", "QuotaExceededError");
        const grown = new Uint8Array(Math.max(file.bytes.length, at + bytes.length));
        grown.set(file.bytes);
        grown.set(bytes, at);
        file.bytes = grown;
        return bytes.length;
      },
      read: (out: Uint8Array, { at }: { readonly at: number }): number => {
        checked();
        const part = file.bytes.subarray(at, at + out.length);
        out.set(part);
        return part.length;
      },
      close: () => {
        file.isOpen = false;
      },
    };
  }
}
