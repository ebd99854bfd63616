import type { RecordedChannel } from "@halfturn/engine/attribution";
import type { PausedWork } from "@halfturn/engine/uncertainty";
import type { ChannelPlace } from "../find-channel.js";
import type { Recording } from "../recording.js";
import { type RecordingResult, recordingValue } from "../recording-result.js";
import { type EvenReaders, evenReaders, longestReader } from "../timing/even-readers.js";
import type { SpoolRoom } from "../timing/sample-spool.js";
import { channelOf } from "./heard-channels.js";
import { type OnOneClock, onOneClock } from "./on-one-clock.js";

/** A channel whose samples are fetched as they are needed: its longest stretch without a gap. */
export interface HeardReader {
  readonly place: ChannelPlace;
  readonly even: EvenReaders;
  readonly recorded: RecordedChannel;
}

/**
 * Reads channels, one at least, at even steps of time, as onOneClock: an hour of three axes takes no more memory than a minute of them. `room` holds what is
 * long, and is closed by whoever made it once the readers are no longer needed. Faults: those of evenReaders and of onOneClock.
 */
export const heardReaders = (
  recording: Recording,
  wanted: readonly ChannelPlace[],
  room: SpoolRoom,
  work: PausedWork = {},
): Promise<RecordingResult<OnOneClock<HeardReader>>> =>
  onOneClock<HeardReader>(
    recording,
    wanted,
    async (place, own) => {
      const even = await evenReaders(recording, place.track, place.index, room, own);
      if (!even.ok) return even;
      const samples = longestReader(even.value);
      return recordingValue({
        form: { place, even: even.value, recorded: channelOf(place.channel, samples) },
        moments: samples,
        notes: even.value.notes,
      });
    },
    work,
  );
