import type { Finding } from "@halfturn/engine/findings";
import type { SampleReader } from "@halfturn/engine/signal";
import { type PausedWork, partOfWork } from "@halfturn/engine/uncertainty";
import { MOVES, shakes } from "../channels/shakes.js";
import type { ChannelQuantity } from "../channels/unit-table.js";
import type { ChannelPlace } from "../find-channel.js";
import type { Channel, Recording } from "../recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";

/** When samples were taken. */
type Moments = Pick<SampleReader, "rate" | "start" | "length">;

/** A channel that was read, in whatever form: when its samples were taken, and what there is to say of them. */
interface ReadChannel<Form> {
  readonly form: Form;
  readonly moments: Moments;
  readonly notes: readonly Finding[];
}

/** How a channel is read. */
export type ChannelReading<Form> = (place: ChannelPlace, work: PausedWork) => Promise<RecordingResult<ReadChannel<Form>>>;

/** The channels that are listened to, on one clock. */
export interface OnOneClock<Form> {
  readonly heard: readonly Form[];
  readonly findings: readonly Finding[];
}

/** What can be listened to, best first: accelerations, vibration velocities and displacements; sounds; samples of which nothing is known but that they are samples. */
export const HEARD: readonly ChannelQuantity[] = ["acceleration", "velocity", "displacement", "pressure", "share"];

/** Whether a vibration can be read from a channel. */
export const isHeard = (channel: Channel): boolean =>
  HEARD.includes(channel.quantity) && (!MOVES.includes(channel.quantity) || shakes(channel));

/**
 * Reads channels, one at least. The first sets the clock; another that does not hold the same moments is left out, and a finding says so.
 * Faults: those of `reading`, and recording.unit-of-another-kind for a channel that is neither an acceleration nor a sound.
 */
export async function onOneClock<Form>(
  recording: Recording,
  wanted: readonly ChannelPlace[],
  reading: ChannelReading<Form>,
  work: PausedWork,
): Promise<RecordingResult<OnOneClock<Form>>> {
  const read: (ReadChannel<Form> & { readonly id: string })[] = [];
  for (const [k, place] of wanted.entries()) {
    const { channel } = place;
    if (!isHeard(channel))
      return recordingFault("recording.unit-of-another-kind", `channel ${channel.id}`, {
        channel: channel.id,
        got: channel.unit ?? channel.quantity,
        expected: "m/s^2, g",
      });
    const one = await reading(place, partOfWork(work, k / wanted.length, (k + 1) / wanted.length));
    if (!one.ok) return one;
    read.push({ ...one.value, id: channel.id });
  }
  const [first] = read;
  // A programmer's error: who asks for channels names one.
  if (first === undefined) throw new RangeError("no channel is wanted");
  const heard = read.filter(({ moments }) => covers(moments, first.moments));
  const leftOut = read.filter(({ moments }) => !covers(moments, first.moments));
  return recordingValue({
    heard: heard.map(({ form }) => form),
    findings: [
      ...recording.notes.filter(({ path }) => path === "" || heard.some(({ id }) => id === path)),
      // Channels of one clock share its gaps and its jitter; that is said once.
      ...heard.flatMap(({ notes }, k) => (k === 0 ? notes : notes.filter(({ code }) => !first.notes.some((note) => note.code === code)))),
      ...leftOut.map(({ id }) => leftOutFinding(id, first.id)),
    ],
  });
}

/** Whether two runs hold the same moments, but for the rounding of their times. */
export const covers = (run: Moments, other: Moments): boolean =>
  run.length === other.length &&
  Math.abs(run.start - other.start) * other.rate < 0.01 &&
  Math.abs(run.rate / other.rate - 1) * run.length < 0.01;

const leftOutFinding = (channel: string, other: string): Finding => ({
  code: "recording.channel-left-out",
  severity: "warn",
  path: channel,
  params: { channel, other },
});
