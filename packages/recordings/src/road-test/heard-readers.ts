import type { RecordedChannel } from "@halfturn/engine/attribution";
import type { Finding } from "@halfturn/engine/findings";
import type { SampleReader } from "@halfturn/engine/signal";
import { type PausedWork, partOfWork } from "@halfturn/engine/uncertainty";
import type { ChannelPlace } from "../find-channel.js";
import type { Channel, Recording } from "../recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import { type EvenReaders, evenReaders, longestReader } from "../timing/even-readers.js";
import { covers } from "../timing/same-moments.js";
import type { SpoolRoom } from "../timing/sample-spool.js";
import { type HeardQuantity, isHeard } from "./hearable-places.js";

/** A channel whose samples are fetched as they are needed: its longest stretch without a gap. */
export interface HeardReader {
  readonly place: ChannelPlace;
  readonly quantity: HeardQuantity;
  readonly even: EvenReaders;
  readonly recorded: RecordedChannel;
}

/** The channels that are listened to, on one clock. */
export interface HeardReaders {
  readonly heard: readonly HeardReader[];
  readonly findings: readonly Finding[];
}

/**
 * Reads channels, one at least, at even steps of time: an hour of three axes takes no more memory than a minute of them. The first sets the clock; another that
 * does not hold the same moments is left out, and a finding says so. `room` holds what is long, and is closed by whoever made it once the readers are no longer
 * needed. Faults: those of evenReaders, and recording.unit-of-another-kind for a channel that is neither an acceleration nor a sound.
 */
export async function heardReaders(
  recording: Recording,
  wanted: readonly ChannelPlace[],
  room: SpoolRoom,
  work: PausedWork = {},
): Promise<RecordingResult<HeardReaders>> {
  const read: HeardReader[] = [];
  for (const [k, place] of wanted.entries()) {
    const { channel, track, index } = place;
    if (!isHeard(channel))
      return recordingFault("recording.unit-of-another-kind", `channel ${channel.id}`, {
        channel: channel.id,
        got: channel.unit ?? channel.quantity,
        expected: "m/s^2, g",
      });
    const even = await evenReaders(recording, track, index, room, partOfWork(work, k / wanted.length, (k + 1) / wanted.length));
    if (!even.ok) return even;
    read.push({ place, quantity: channel.quantity, even: even.value, recorded: recordedChannel(channel, longestReader(even.value)) });
  }
  const [first] = read;
  // A programmer's error: who asks for channels names one.
  if (first === undefined) throw new RangeError("no channel is wanted");
  const isOnClock = ({ recorded }: HeardReader): boolean => covers(recorded.samples, first.recorded.samples);
  const heard = read.filter(isOnClock);
  const leftOut = read.filter((one) => !isOnClock(one));
  const idOf = ({ place }: HeardReader): string => place.channel.id;
  return recordingValue({
    heard,
    findings: [
      ...recording.notes.filter(({ path }) => path === "" || heard.some((one) => idOf(one) === path)),
      // Channels of one clock share its gaps and its jitter; that is said once.
      ...heard.flatMap(({ even: { notes } }, k) =>
        k === 0 ? notes : notes.filter(({ code }) => !first.even.notes.some((note) => note.code === code)),
      ),
      ...leftOut.map((one) => leftOutFinding(idOf(one), idOf(first))),
    ],
  });
}

/** Samples as the engine takes them, with what is known of their channel. */
const recordedChannel = ({ quantity, fullScale }: Channel, samples: SampleReader): RecordedChannel => ({
  samples,
  quantity: quantity === "acceleration" || quantity === "velocity" || quantity === "displacement" ? quantity : "sound",
  fullScale,
});

const leftOutFinding = (channel: string, other: string): Finding => ({
  code: "recording.channel-left-out",
  severity: "warn",
  path: channel,
  params: { channel, other },
});
