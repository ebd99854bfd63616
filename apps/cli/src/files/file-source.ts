import { open, stat } from "node:fs/promises";
import type { ByteSource } from "@halfturn/recordings";

/** A file that is read in parts, and how to let go of it. */
export interface OpenFile {
  readonly source: ByteSource;
  readonly close: () => Promise<void>;
}

/** Opens a file to be read in parts. Rejects as the system does; a folder with EISDIR, and what has no beginning and end (a pipe, a device) with ESPIPE. */
export async function openFile(path: string): Promise<OpenFile> {
  // Asked before it is opened: opening a pipe waits for somebody to write.
  const found = await stat(path);
  if (found.isDirectory()) throw Object.assign(new Error("is a folder"), { code: "EISDIR" });
  if (!found.isFile()) throw Object.assign(new Error("is no file"), { code: "ESPIPE" });
  const file = await open(path, "r");
  return {
    source: {
      size: found.size,
      read: async (offset, length) => {
        const bytes = new Uint8Array(length);
        const { bytesRead } = await file.read(bytes, 0, length, offset);
        return bytes.subarray(0, bytesRead);
      },
    },
    close: () => file.close(),
  };
}
