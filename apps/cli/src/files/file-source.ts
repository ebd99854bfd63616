import { open } from "node:fs/promises";
import type { ByteSource } from "@halfturn/recordings";

/** A file that is read in parts, and how to let go of it. */
export interface OpenFile {
  readonly source: ByteSource;
  readonly close: () => Promise<void>;
}

/** Opens a file to be read in parts. Rejects as the system does; a folder with EISDIR. */
export async function openFile(path: string): Promise<OpenFile> {
  const file = await open(path, "r");
  const found = await file.stat();
  if (found.isDirectory()) {
    await file.close();
    throw Object.assign(new Error("is a folder"), { code: "EISDIR" });
  }
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
