import type { Finding } from "@halfturn/engine/findings";
import type { SampleReader } from "@halfturn/engine/signal";
import { type LongWork, type PausedWork, partOfWork } from "@halfturn/engine/uncertainty";
import { channelPlaces } from "../find-channel.js";
import type { Block, Channel, Recording, Selection } from "../recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import { evenReaders, longestReader } from "../timing/even-readers.js";
import { covers } from "../timing/same-moments.js";
import type { SpoolRoom } from "../timing/sample-spool.js";

/** A recording of one track on an even clock, and what had to be done for it. */
export interface EvenRecording {
  readonly recording: Recording;
  readonly findings: readonly Finding[];
}

/**
 * All channels of a recording together at even steps of time, as a sound file holds them: the longest stretch without a gap. Channels are read one after another
 * into `room`, which is closed by whoever made it. format: who asks, for the fault. Faults: those of evenReaders; recording.cannot-hold where channels do not hold the same moments.
 */
export async function onEvenSteps(
  recording: Recording,
  format: string,
  room: SpoolRoom,
  work: PausedWork = {},
): Promise<RecordingResult<EvenRecording>> {
  const places = channelPlaces(recording);
  const channels: Channel[] = [];
  const readers: SampleReader[] = [];
  const notes: Finding[] = [];
  for (const [k, { track, index, channel }] of places.entries()) {
    const even = await evenReaders(recording, track, index, room, partOfWork(work, k / places.length, (k + 1) / places.length));
    if (!even.ok) return k > 0 && track > 0 && UNSTEADY.includes(even.code) ? severalClocks(format) : even;
    const reader = longestReader(even.value);
    if (!covers(reader, readers[0] ?? reader)) return severalClocks(format);
    channels.push(channel);
    readers.push(reader);
    // Channels of one clock share its gaps and its jitter; that is said once.
    notes.push(...even.value.notes.filter(({ code }) => notes.every((note) => note.code !== code)));
  }
  const [first] = readers;
  if (first === undefined) return recordingFault("recording.cannot-hold", "", { format, what: "nothing" });
  const { start, rate, length } = first;
  return recordingValue({
    recording: {
      format: recording.format,
      notes: recording.notes,
      tracks: [{ channels, clock: { kind: "even", start, rate: wholeRate(rate, length), count: length } }],
      read: (selection, own) => readerBlocks(readers, selection, own),
    },
    findings: notes,
  });
}

/** What a slow log on a clock of its own looks like beside a vibration. */
const UNSTEADY: readonly string[] = ["recording.too-few-samples", "recording.no-steady-rate"];

const severalClocks = (format: string) => recordingFault("recording.cannot-hold", "", { format, what: "several-clocks" });

/** A measured rate is that whole number for which no sample of the recording moves by a tenth of a step. */
function wholeRate(rate: number, count: number): number {
  const whole = Math.round(rate);
  return whole > 0 && Math.abs(rate / whole - 1) * count < 0.1 ? whole : rate;
}

const STRETCH = 16_384;

async function* readerBlocks(
  readers: readonly SampleReader[],
  { channels }: Selection,
  work: LongWork = {},
): AsyncGenerator<RecordingResult<Block>> {
  const count = readers[0]?.length ?? 0;
  for (let first = 0; first < count; first += STRETCH) {
    work.signal?.throwIfAborted();
    const length = Math.min(STRETCH, count - first);
    const values = channels.map((channel) => {
      const samples = new Float64Array(length);
      readers[channel]?.read(first, samples);
      return samples;
    });
    yield recordingValue({ first, times: null, values, notes: [] });
    work.onProgress?.((first + length) / count);
  }
}
