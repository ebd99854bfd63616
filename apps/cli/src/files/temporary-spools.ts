import { closeSync, mkdtempSync, openSync, readSync, rmSync, writeSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { SampleSpool, SpoolRoom } from "@halfturn/recordings";

/** Room for samples in the system's folder for temporary files, and how to give it back. */
export interface TemporarySpools extends SpoolRoom {
  readonly close: () => void;
}

/** A temporary file could not be made or written: the disk is full, or the folder may not be written to. */
export class SpoolFailure extends Error {
  override readonly name = "SpoolFailure";
}

/** 8 MB, four minutes at 4,096 Hz: what costs nobody anything to hold. */
const MOST_HELD = 1_000_000;
const WIDTH = Float64Array.BYTES_PER_ELEMENT;

/** Spools of doubles, so that an answer does not depend on where the samples lay. Nobody else may read them. */
export function temporarySpools(held = MOST_HELD): TemporarySpools {
  const spools = new Set<SampleSpool>();
  return {
    held,
    open: () => {
      const spool = orFailure(() => fileSpool((closed) => spools.delete(closed)));
      spools.add(spool);
      return spool;
    },
    close: () => {
      for (const spool of spools) spool.close();
    },
  };
}

function fileSpool(onClose: (spool: SampleSpool) => void): SampleSpool {
  const folder = mkdtempSync(join(tmpdir(), "halfturn-"));
  const file = openedIn(folder);
  // Where the system lets an open file go from its folder, nothing is left even if the program is killed.
  discard(folder);
  let written = 0;
  const spool: SampleSpool = {
    append: (values) => {
      orFailure(() => writeWholly(file, bytesOf(values), written));
      written += values.length * WIDTH;
    },
    read: (first, out) => readWholly(file, bytesOf(out), first * WIDTH),
    close: () => {
      closeSync(file);
      discard(folder);
      onClose(spool);
    },
  };
  return spool;
}

function openedIn(folder: string): number {
  try {
    return openSync(join(folder, "samples"), "wx+", 0o600);
  } catch (error) {
    discard(folder);
    throw error;
  }
}

/** On some systems an open file stays; it is removed once it is closed. */
function discard(folder: string): void {
  try {
    rmSync(folder, { recursive: true, force: true });
  } catch {
    // Left to the system, which clears the folder for temporary files.
  }
}

const bytesOf = ({ buffer, byteOffset, byteLength }: Float64Array): Uint8Array => new Uint8Array(buffer, byteOffset, byteLength);

// The system may write or read less than it was asked to.
function writeWholly(file: number, bytes: Uint8Array, position: number): void {
  for (let done = 0; done < bytes.length; ) done += writeSync(file, bytes, done, bytes.length - done, position + done);
}

function readWholly(file: number, bytes: Uint8Array, position: number): void {
  for (let done = 0; done < bytes.length; ) {
    const got = readSync(file, bytes, done, bytes.length - done, position + done);
    if (got === 0) throw new RangeError(`samples are asked for that were never written, at byte ${position + done}`);
    done += got;
  }
}

function orFailure<Value>(work: () => Value): Value {
  try {
    return work();
  } catch (cause) {
    throw new SpoolFailure("a temporary file cannot be written", { cause });
  }
}
