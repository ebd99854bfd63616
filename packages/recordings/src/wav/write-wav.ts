import type { LongWork } from "@halfturn/engine/uncertainty";
import type { Recording } from "../recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import { BYTES_OF, SAMPLE_WRITERS, type WavEncoding } from "./wav-encoding.js";

/** How a WAV is written. */
export interface WavForm {
  readonly encoding: WavEncoding;
  /** The SI value that full scale stands for, above 0, of all channels or of each; say it to whoever reads the file. */
  readonly fullScale: number | readonly number[];
}

const LARGEST_RIFF = 0xffff_ffff;
const HEADER = 12 + 36 + 8 + 40 + 8;
const SUBTYPE_TAIL = [0x00, 0x00, 0x00, 0x00, 0x10, 0x00, 0x80, 0x00, 0x00, 0xaa, 0x00, 0x38, 0x9b, 0x71];

/**
 * A recording as the bytes of a WAV (WAVE_FORMAT_EXTENSIBLE; RF64 where it is too long for RIFF). Faults: recording.cannot-hold for several clocks or an
 * uneven one, or for values that are missing in a track.
 */
export async function* writeWav(recording: Recording, form: WavForm, work?: LongWork): AsyncGenerator<RecordingResult<Uint8Array>> {
  const [track] = recording.tracks;
  const what = track === undefined ? "nothing" : recording.tracks.length > 1 ? "several-clocks" : "uneven-clock";
  if (track?.clock.kind !== "even" || what === "several-clocks") {
    yield recordingFault("recording.cannot-hold", "", { format: "WAV", what });
    return;
  }
  const channels = track.channels.length;
  const { count, rate } = track.clock;
  const bytes = count * channels * BYTES_OF[form.encoding];
  if (Math.round(rate) !== rate) {
    // A WAV's rate is a whole number: any other would change every order read from it.
    yield recordingFault("recording.cannot-hold", "", { format: "WAV", what: "uneven-clock" });
    return;
  }
  yield recordingValue(wavHead(form, channels, rate, bytes));
  const every = track.channels.map((_, index) => index);
  for await (const block of recording.read({ track: 0, channels: every }, work)) {
    if (!block.ok) {
      yield block;
      return;
    }
    const packed = packedSamples(block.value.values, form);
    if (packed === null) {
      yield recordingFault("recording.cannot-hold", "", { format: "WAV", what: "missing-values" });
      return;
    }
    yield recordingValue(packed);
  }
  if (bytes % 2 === 1) yield recordingValue(new Uint8Array(1));
}

function packedSamples(values: readonly Float64Array[], { encoding, fullScale }: WavForm): Uint8Array | null {
  const width = BYTES_OF[encoding];
  const length = values[0]?.length ?? 0;
  const bytes = new Uint8Array(length * values.length * width);
  const view = new DataView(bytes.buffer);
  const write = SAMPLE_WRITERS[encoding];
  for (const [channel, samples] of values.entries()) {
    const scale = typeof fullScale === "number" ? fullScale : (fullScale[channel] as number);
    for (let k = 0, at = channel * width; k < length; k++, at += width * values.length) {
      const value = samples[k] as number;
      if (!Number.isFinite(value)) return null;
      write(view, at, value / scale);
    }
  }
  return bytes;
}

/** RIFF, a ds64 (or JUNK in its place), fmt, and the head of data. */
function wavHead({ encoding }: WavForm, channels: number, rate: number, bytes: number): Uint8Array {
  const head = new Uint8Array(HEADER);
  const view = new DataView(head.buffer);
  const text = (at: number, word: string): void =>
    head.set(
      [...word].map((letter) => letter.charCodeAt(0)),
      at,
    );
  const total = HEADER - 8 + bytes + (bytes % 2);
  const long = total > LARGEST_RIFF;
  text(0, long ? "RF64" : "RIFF");
  view.setUint32(4, long ? LARGEST_RIFF : total, true);
  text(8, "WAVE");
  text(12, long ? "ds64" : "JUNK");
  view.setUint32(16, 28, true);
  if (long) {
    view.setBigUint64(20, BigInt(total), true);
    view.setBigUint64(28, BigInt(bytes), true);
    view.setBigUint64(36, BigInt(bytes / (channels * BYTES_OF[encoding])), true);
  }
  text(48, "fmt ");
  view.setUint32(52, 40, true);
  const width = BYTES_OF[encoding];
  view.setUint16(56, 0xfffe, true);
  view.setUint16(58, channels, true);
  view.setUint32(60, rate, true);
  view.setUint32(64, rate * channels * width, true);
  view.setUint16(68, channels * width, true);
  view.setUint16(70, width * 8, true);
  view.setUint16(72, 22, true);
  view.setUint16(74, width * 8, true);
  view.setUint16(80, encoding.startsWith("float") ? 3 : 1, true);
  head.set(SUBTYPE_TAIL, 82);
  text(96, "data");
  view.setUint32(100, long ? LARGEST_RIFF : bytes, true);
  return head;
}
