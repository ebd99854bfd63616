import type { SampleSpool, SpoolRoom } from "@halfturn/recordings";
import { newId } from "../../device/new-id.js";
import { lockOf, SPOOL_FOLDER, type SpoolDevice } from "./spool-folder.js";

/** Room for samples in files that only this app sees, and how to give it back. */
export interface PrivateSpools extends SpoolRoom {
  /** Resolves once nothing is left. */
  readonly close: () => Promise<void>;
}

/** Why samples are held in memory after all: the browser gives no files, or no more room in them. */
export type NoFiles = "no-files" | "no-room";

export class SpoolFailure extends Error {
  override readonly name = "SpoolFailure";
  constructor(
    readonly why: NoFiles,
    options: ErrorOptions,
  ) {
    super("a private file cannot be written", options);
  }
}

/** A file that is read and written at once; browsers have it in dedicated workers. The types of the page do not name it. */
interface SyncFile {
  readonly read: (out: Uint8Array, options: { readonly at: number }) => number;
  readonly write: (bytes: Uint8Array, options: { readonly at: number }) => number;
  readonly close: () => void;
}

/** 8 MB, four minutes at 4,096 Hz: what costs nobody anything to hold. */
export const MOST_HELD = 1_000_000;
const WIDTH = Float64Array.BYTES_PER_ELEMENT;

/** Spools in a folder of their own, which is made when the first is needed; null where the browser has no private files (outside a secure context, say). */
export function privateSpools(held = MOST_HELD, { storage, locks }: SpoolDevice = navigator): PrivateSpools | null {
  if (!storage?.getDirectory || !locks) return null;
  const name = newId();
  const open = new Set<SampleSpool>();
  let count = 0;
  let release: () => void = () => undefined;
  let folder: Promise<FileSystemDirectoryHandle> | null = null;
  const made = async (): Promise<FileSystemDirectoryHandle> => {
    // Held before the folder is there, so that nobody takes it for one that was left.
    await new Promise<void>((granted) => {
      void locks.request(lockOf(name), () => {
        granted();
        return new Promise<void>((done) => {
          release = done;
        });
      });
    });
    const all = await (await storage.getDirectory()).getDirectoryHandle(SPOOL_FOLDER, { create: true });
    return all.getDirectoryHandle(name, { create: true });
  };
  return {
    held,
    open: async () => {
      try {
        folder ??= made();
        const file = await openedIn(await folder, String(count++));
        const spool = fileSpool(file, () => open.delete(spool));
        open.add(spool);
        return spool;
      } catch (cause) {
        throw failure(cause);
      }
    },
    close: async () => {
      for (const spool of open) spool.close();
      const mine = await folder?.catch(() => null);
      if (mine) await removed(storage, name);
      release();
    },
  };
}

async function openedIn(folder: FileSystemDirectoryHandle, name: string): Promise<SyncFile> {
  const file = await folder.getFileHandle(name, { create: true });
  return (file as unknown as { readonly createSyncAccessHandle: () => Promise<SyncFile> }).createSyncAccessHandle();
}

async function removed(storage: StorageManager, name: string): Promise<void> {
  const root = await storage.getDirectory();
  const all = await root.getDirectoryHandle(SPOOL_FOLDER);
  // What cannot be removed now is swept at the next start.
  await all.removeEntry(name, { recursive: true }).catch(() => undefined);
}

/** Numbers fetched together: neighbours are asked for next, and each call costs the browser far more than copying does. */
const FETCHED = 16_384;

function fileSpool(file: SyncFile, onClose: () => void): SampleSpool {
  let written = 0;
  let fetched = new Float64Array(0);
  let from = 0;
  const fetch = (first: number, out: Float64Array): void => {
    const got = file.read(bytesOf(out), { at: first * WIDTH });
    // A programmer's error: only what was appended is asked for, and a file is read as far as it goes.
    if (got < out.length * WIDTH) throw new RangeError(`samples are asked for that were never written, at byte ${first * WIDTH + got}`);
  };
  return {
    append: (values) => {
      const bytes = bytesOf(values);
      for (let done = 0; done < bytes.length; ) {
        const wrote = writtenTo(file, done === 0 ? bytes : bytes.subarray(done), written * WIDTH + done);
        if (wrote === 0) throw new SpoolFailure("no-room", {});
        done += wrote;
      }
      written += values.length;
    },
    read: (first, out) => {
      if (out.length >= FETCHED) return fetch(first, out);
      if (first < from || first + out.length > from + fetched.length) {
        from = first;
        fetched = new Float64Array(Math.max(out.length, Math.min(FETCHED, written - first)));
        fetch(from, fetched);
      }
      out.set(fetched.subarray(first - from, first - from + out.length));
    },
    close: () => {
      file.close();
      fetched = new Float64Array(0);
      onClose();
    },
  };
}

const bytesOf = ({ buffer, byteOffset, byteLength }: Float64Array): Uint8Array => new Uint8Array(buffer, byteOffset, byteLength);

function writtenTo(file: SyncFile, bytes: Uint8Array, at: number): number {
  try {
    return file.write(bytes, { at });
  } catch (cause) {
    throw failure(cause);
  }
}

const failure = (cause: unknown): SpoolFailure =>
  new SpoolFailure((cause as { readonly name?: unknown } | null)?.name === "QuotaExceededError" ? "no-room" : "no-files", { cause });
