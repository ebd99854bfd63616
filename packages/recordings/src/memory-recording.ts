import type { LongWork } from "@halfturn/engine/uncertainty";
import type { Block, Clock, Recording, Selection, Track } from "./recording.js";
import { type RecordingResult, recordingValue } from "./recording-result.js";

/** Samples in memory: a track, the times where its clock is stamped, and one array in SI per channel. */
export interface MemoryTrack {
  readonly channels: Track["channels"];
  readonly clock: Clock;
  readonly times: Float64Array | null;
  readonly values: readonly Float64Array[];
}

const STRETCH = 8192;

/** What is in memory as a recording, to be written to a file or read like one. */
export const memoryRecording = (tracks: readonly MemoryTrack[]): Recording => ({
  format: "memory",
  tracks: tracks.map(({ channels, clock }) => ({ channels, clock })),
  notes: [],
  read: (selection, work) => blocksOf(tracks[selection.track] as MemoryTrack, selection, work),
});

async function* blocksOf(track: MemoryTrack, selection: Selection, work: LongWork = {}): AsyncGenerator<RecordingResult<Block>> {
  const count = track.values[0]?.length ?? 0;
  for (let first = 0; first < count; first += STRETCH) {
    work.signal?.throwIfAborted();
    const end = Math.min(count, first + STRETCH);
    yield recordingValue({
      first,
      times: track.times?.slice(first, end) ?? null,
      values: selection.channels.map((channel) => (track.values[channel] as Float64Array).slice(first, end)),
      notes: [],
    });
    work.onProgress?.(end / count);
  }
}
