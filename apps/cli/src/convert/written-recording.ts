import type { Finding, RecordingFault } from "@halfturn/engine/findings";
import { type PausedWork, partOfWork } from "@halfturn/engine/uncertainty";
import {
  type Channel,
  greatestValues,
  hearablePlaces,
  onEvenSteps,
  type Recording,
  type RecordingResult,
  type SpoolRoom,
  writeCsv,
  writeUff,
  writeWav,
} from "@halfturn/recordings";
import type { ConvertFlags } from "../commands/convert-flags.js";
import { ENCODINGS_OF } from "./recording-file.js";
import { soundScale } from "./sound-scale.js";

type Bytes = AsyncIterable<RecordingResult<Uint8Array>>;

/** A recording on its way into a file: its bytes, and what a reader of the file has to be told. */
export interface WrittenRecording {
  readonly ok: true;
  readonly bytes: Bytes;
  readonly recording: Recording;
  /** What full scale stands for, by channel; null where the file holds the values themselves. */
  readonly scales: readonly number[] | null;
  readonly findings: readonly Finding[];
}

/** A sound file of whole numbers cannot hold values beyond its full scale. */
export interface TooLarge {
  readonly ok: false;
  readonly code: "too-large";
  readonly channel: Channel;
  readonly reaches: number;
}

type Form = Pick<ConvertFlags, "output" | "encoding" | "fullScale" | "decimal">;

/** Shares of the work on a sound file: even steps, the greatest value. */
const [EVEN, LOOKED] = [0.5, 0.7];

/** Makes a recording ready to be written in another form, in constant memory. Rejects with the signal's reason when it is stopped. */
export async function writtenRecording(
  recording: Recording,
  form: Form,
  room: SpoolRoom,
  work: PausedWork,
): Promise<WrittenRecording | TooLarge | RecordingFault> {
  const { kind } = form.output;
  if (kind === "wav") return soundFile(recording, form, room, work);
  if (kind === "uff") {
    const bytes = writeUff(recording, form.encoding === "binary" ? { kind: "binary", littleEndian: true } : { kind: "text" }, work);
    return { ok: true, bytes, recording, scales: null, findings: recording.notes };
  }
  const decimal = form.decimal === "comma" ? "," : ".";
  const separator = kind === "tsv" ? "\t" : decimal === "," ? ";" : ",";
  const even = onOneEvenClock(recording) ? await onEvenSteps(recording, "CSV", room, partOfWork(work, 0, EVEN)) : null;
  if (even !== null && !even.ok) return even;
  const together = even?.value.recording ?? recording;
  return {
    ok: true,
    bytes: writeCsv(together, { separator, decimal }, partOfWork(work, even === null ? 0 : EVEN, 1)),
    recording: together,
    scales: null,
    findings: recording.notes,
  };
}

/** Whether several tracks share one even clock, as those of a universal file do: they then belong into one table with one column of times. */
function onOneEvenClock({ tracks }: Recording): boolean {
  const [first, ...others] = tracks.map(({ clock }) => clock);
  if (first?.kind !== "even" || others.length === 0) return false;
  return others.every(
    (clock) => clock.kind === "even" && clock.rate === first.rate && clock.start === first.start && clock.count === first.count,
  );
}

async function soundFile(
  recording: Recording,
  { encoding = ENCODINGS_OF.wav[0], fullScale }: Form,
  room: SpoolRoom,
  work: PausedWork,
): Promise<WrittenRecording | TooLarge | RecordingFault> {
  const even = await onEvenSteps(recording, "WAV", room, partOfWork(work, 0, EVEN));
  if (!even.ok) return even;
  const { recording: together, findings } = even.value;
  const channels = together.tracks[0]?.channels ?? [];
  const greatest = await greatestValues(together, 0, partOfWork(work, EVEN, LOOKED));
  if (!greatest.ok) return greatest;
  const [heard] = hearablePlaces(together);
  const given =
    fullScale === undefined ? null : { value: fullScale, quantity: heard?.channel.quantity ?? channels[0]?.quantity ?? "unknown" };
  const written = encoding === "text" || encoding === "binary" ? ENCODINGS_OF.wav[0] : encoding;
  const scale = soundScale(channels, greatest.value, given, written.startsWith("pcm"));
  if (!scale.ok) return { ...scale, code: "too-large" };
  const bytes = writeWav(together, { encoding: written, fullScale: scale.scales }, partOfWork(work, LOOKED, 1));
  return { ok: true, bytes, recording: together, scales: scale.scales, findings: [...recording.notes, ...findings] };
}
