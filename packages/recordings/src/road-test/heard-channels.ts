import type { RecordedChannel } from "@halfturn/engine/attribution";
import type { Finding } from "@halfturn/engine/findings";
import { readerOf, type TimeSignal } from "@halfturn/engine/signal";
import { partOfWork } from "@halfturn/engine/uncertainty";
import type { ChannelQuantity } from "../channels/unit-table.js";
import { type ChannelPlace, channelPlaces } from "../find-channel.js";
import type { Channel, Recording } from "../recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import { type EvenChannel, evenChannel } from "../timing/even-channel.js";

/** A channel on even steps: its longest stretch without a gap. */
export interface HeardChannel {
  readonly place: ChannelPlace;
  readonly even: EvenChannel;
  readonly run: TimeSignal;
}

/** The channels that are listened to, on one clock. */
export interface HeardChannels {
  readonly heard: readonly HeardChannel[];
  readonly findings: readonly Finding[];
}

/** What can be listened to, best first: accelerations; sounds; samples of which nothing is known but that they are samples. */
const HEARD: readonly ChannelQuantity[] = ["acceleration", "pressure", "share"];

/** Whether a vibration can be read from a channel. */
export const isHeard = ({ quantity }: Channel): boolean => HEARD.includes(quantity);

/** Every channel of the best kind that a recording has; none where it has nothing that can be listened to. */
export function hearablePlaces(recording: Recording): readonly ChannelPlace[] {
  const places = channelPlaces(recording);
  return HEARD.map((quantity) => places.filter(({ channel }) => channel.quantity === quantity)).find(({ length }) => length > 0) ?? [];
}

/**
 * Reads channels, one at least, at even steps of time. The first sets the clock; another that does not hold the same moments is left out, and a finding says so.
 * Faults: those of evenChannel, and recording.unit-of-another-kind for a channel that is neither an acceleration nor a sound.
 */
export async function heardChannels(
  recording: Recording,
  wanted: readonly ChannelPlace[],
  work: Parameters<typeof evenChannel>[3] = {},
): Promise<RecordingResult<HeardChannels>> {
  const read: HeardChannel[] = [];
  for (const [k, place] of wanted.entries()) {
    const { channel, track, index } = place;
    if (!isHeard(channel))
      return recordingFault("recording.unit-of-another-kind", `channel ${channel.id}`, {
        channel: channel.id,
        got: channel.unit ?? channel.quantity,
        expected: "m/s^2, g",
      });
    const even = await evenChannel(recording, track, index, partOfWork(work, k / wanted.length, (k + 1) / wanted.length));
    if (!even.ok) return even;
    read.push({ place, even: even.value, run: longest(even.value.runs) });
  }
  const [first] = read;
  // A programmer's error: who asks for channels names one.
  if (first === undefined) throw new RangeError("no channel is wanted");
  const heard = read.filter(({ run }) => covers(run, first.run));
  const leftOut = read.filter(({ run }) => !covers(run, first.run));
  return recordingValue({
    heard,
    findings: [
      ...recording.notes.filter(({ path: id }) => id === "" || heard.some(({ place }) => place.channel.id === id)),
      // Channels of one clock share its gaps and its jitter; that is said once.
      ...heard.flatMap(({ even: { notes } }, k) =>
        k === 0 ? notes : notes.filter(({ code }) => !first.even.notes.some((note) => note.code === code)),
      ),
      ...leftOut.map(({ place }) => leftOutFinding(place.channel.id, first.place.channel.id)),
    ],
  });
}

/** A channel as the engine takes it. */
export const recordedChannel = ({ place: { channel }, run }: Pick<HeardChannel, "place" | "run">): RecordedChannel => ({
  samples: readerOf(run),
  quantity: channel.quantity === "acceleration" ? "acceleration" : "sound",
  fullScale: channel.fullScale,
});

const longest = (runs: EvenChannel["runs"]): TimeSignal =>
  runs.reduce((best, run) => (run.samples.length > best.samples.length ? run : best));

/** Whether two runs hold the same moments, but for the rounding of their times. */
const covers = (run: TimeSignal, other: TimeSignal): boolean =>
  run.samples.length === other.samples.length &&
  Math.abs(run.start - other.start) * other.rate < 0.01 &&
  Math.abs(run.rate / other.rate - 1) * run.samples.length < 0.01;

const leftOutFinding = (channel: string, other: string): Finding => ({
  code: "recording.channel-left-out",
  severity: "warn",
  path: channel,
  params: { channel, other },
});
