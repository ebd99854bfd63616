import type { ChannelPlace, Recording, RecordingResult, SpoolRoom } from "@halfturn/recordings";
import { fitsHere, MOST_SAMPLES, tooMany } from "./fits-here.js";
import { type NoFiles, type PrivateSpools, privateSpools, SpoolFailure } from "./private-spools.js";

/** An answer, and where the samples lie that it reads. */
export interface Housed<Value> {
  readonly answer: RecordingResult<Value>;
  /** null where files hold what is long. */
  readonly inMemory: NoFiles | null;
  /** Gives the room back; nothing is read afterwards. */
  readonly close: () => Promise<void>;
}

class MemoryFull extends Error {
  override readonly name = "MemoryFull";
}

/**
 * Works on channels with their samples in private files; where there are none, or no room for them, in memory and up to a bound. Fault there:
 * recording.too-many. Whatever else the work throws leaves nothing behind.
 */
export async function housed<Value>(
  recording: Recording,
  places: readonly ChannelPlace[],
  work: (room: SpoolRoom) => Promise<RecordingResult<Value>>,
  spools: PrivateSpools | null = privateSpools(),
): Promise<Housed<Value>> {
  let inMemory: NoFiles = "no-files";
  if (spools !== null) {
    try {
      return { answer: await work(spools), inMemory: null, close: spools.close };
    } catch (error) {
      await spools.close();
      if (!(error instanceof SpoolFailure)) throw error;
      inMemory = error.why;
    }
  }
  return { answer: await heldInMemory(recording, places, work), inMemory, close: async () => undefined };
}

async function heldInMemory<Value>(
  recording: Recording,
  places: readonly ChannelPlace[],
  work: (room: SpoolRoom) => Promise<RecordingResult<Value>>,
): Promise<RecordingResult<Value>> {
  const fits = fitsHere(recording, places);
  if (!fits.ok) return fits;
  const full = (): never => {
    throw new MemoryFull("the bound of what is held in memory is reached");
  };
  try {
    // A table does not say how long it is: each channel may take its part.
    return await work({ held: Math.floor(MOST_SAMPLES / places.length), open: full });
  } catch (error) {
    if (error instanceof MemoryFull) return tooMany();
    throw error;
  }
}
