import type { RecordedChannel } from "@halfturn/engine/attribution";
import { readerOf, type SampleReader, type TimeSignal } from "@halfturn/engine/signal";
import type { PausedWork } from "@halfturn/engine/uncertainty";
import { type ChannelPlace, channelPlaces } from "../find-channel.js";
import type { Channel, Recording } from "../recording.js";
import { type RecordingResult, recordingValue } from "../recording-result.js";
import { type EvenChannel, evenChannel } from "../timing/even-channel.js";
import { HEARD, isHeard, type OnOneClock, onOneClock } from "./on-one-clock.js";

/** A channel on even steps: its longest stretch without a gap. */
export interface HeardChannel {
  readonly place: ChannelPlace;
  readonly even: EvenChannel;
  readonly run: TimeSignal;
}

/** The channels that are listened to, on one clock. */
export type HeardChannels = OnOneClock<HeardChannel>;

/** Every channel of the best kind that a recording has; none where it has nothing that can be listened to. */
export function hearablePlaces(recording: Recording): readonly ChannelPlace[] {
  const places = channelPlaces(recording);
  return (
    HEARD.map((quantity) => places.filter(({ channel }) => channel.quantity === quantity && isHeard(channel))).find(
      ({ length }) => length > 0,
    ) ?? []
  );
}

/** Reads channels, one at least, at even steps of time and into memory, as onOneClock. Faults: those of evenChannel and of onOneClock. */
export const heardChannels = (
  recording: Recording,
  wanted: readonly ChannelPlace[],
  work: PausedWork = {},
): Promise<RecordingResult<HeardChannels>> =>
  onOneClock<HeardChannel>(
    recording,
    wanted,
    async (place, own) => {
      const even = await evenChannel(recording, place.track, place.index, own);
      if (!even.ok) return even;
      const run = longestRun(even.value);
      const { rate, start, samples } = run;
      return recordingValue({
        form: { place, even: even.value, run },
        moments: { rate, start, length: samples.length },
        notes: even.value.notes,
      });
    },
    work,
  );

/** The longest stretch without a gap. */
export const longestRun = ({ runs }: EvenChannel): TimeSignal =>
  runs.reduce((best, run) => (run.samples.length > best.samples.length ? run : best));

/** A channel as the engine takes it. */
export const recordedChannel = ({ place: { channel }, run }: Pick<HeardChannel, "place" | "run">): RecordedChannel =>
  channelOf(channel, readerOf(run));

/** Samples as the engine takes them, with what is known of their channel. */
export const channelOf = ({ quantity, fullScale }: Channel, samples: SampleReader): RecordedChannel => ({
  samples,
  quantity: quantity === "acceleration" || quantity === "velocity" || quantity === "displacement" ? quantity : "sound",
  fullScale,
});
