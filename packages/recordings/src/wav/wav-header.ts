import { type ByteSource, readUpTo } from "../bytes/byte-source.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import { BYTES_OF, type WavEncoding, wavEncoding } from "./wav-encoding.js";

/** Where the samples of a WAV lie and how they are written. */
export interface WavHeader {
  readonly encoding: WavEncoding;
  readonly channels: number;
  readonly rate: number;
  readonly dataOffset: number;
  /** Samples of each channel. */
  readonly count: number;
  /** Whether the header left the length open, as a recorder does that never came to write it. */
  readonly openLength: boolean;
}

const UNKNOWN_LENGTH = 0xffff_ffff;
/** What programs write into a pipe, where they cannot go back to fill the length in; the second is SoX's. */
const PIPE_LENGTHS = [UNKNOWN_LENGTH, 0x7fff_f000];
const EXTENSIBLE = 0xfffe;
/** Any real file has a handful; this many are an attempt to keep a reader busy. */
const MOST_CHUNKS = 10_000;
const MOST_CHANNELS = 1024;
/** Far above any sensor's. */
const MOST_RATE = 50_000_000;

interface Format {
  readonly encoding: WavEncoding;
  readonly channels: number;
  readonly rate: number;
}

interface Found {
  readonly format: Format | null;
  /** Length of the data as ds64 says; null without one. */
  readonly longData: number | null;
}

/**
 * Reads the chunks of a RIFF, RF64 or BW64 file up to its data. Unknown chunks are stepped over, odd ones with their padding byte.
 * Sources: Microsoft and IBM, "Multimedia Programming Interface and Data Specifications 1.0", 1991; EBU Tech 3306 (RF64), 2009; ITU-R BS.2088 (BW64).
 */
export async function readWavHeader(source: ByteSource): Promise<RecordingResult<WavHeader>> {
  let found: Found = { format: null, longData: null };
  let at = 12;
  for (let chunk = 0; chunk < MOST_CHUNKS; chunk++) {
    const head = await readUpTo(source, at, 8);
    if (head.length < 8) {
      const part = found.format === null ? "fmt " : "data";
      return recordingFault("recording.part-missing", `byte ${at}`, { part });
    }
    const id = String.fromCharCode(...head.subarray(0, 4));
    const length = viewOf(head).getUint32(4, true);
    if (id === "data") return dataAt(source, at + 8, length, found);
    if (at + 8 + length > source.size) {
      return recordingFault("recording.truncated", `byte ${at}`, { promised: at + 8 + length, present: source.size });
    }
    if (id === "fmt " || id === "ds64") {
      const body = await readUpTo(source, at + 8, Math.min(length, 64));
      const read = id === "fmt " ? formatOf(body, at) : longDataOf(body, at);
      if (!read.ok) return read;
      found = { ...found, ...read.value };
    }
    at += 8 + length + (length % 2);
  }
  return recordingFault("recording.too-many", `byte ${at}`, { of: "chunks", limit: MOST_CHUNKS });
}

export const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

function longDataOf(body: Uint8Array, at: number): RecordingResult<Partial<Found>> {
  if (body.length < 24) return recordingFault("recording.part-missing", `byte ${at}`, { part: "ds64" });
  return recordingValue({ longData: Number(viewOf(body).getBigUint64(8, true)) });
}

function formatOf(body: Uint8Array, at: number): RecordingResult<Partial<Found>> {
  const path = `byte ${at}`;
  if (body.length < 16) return recordingFault("recording.part-missing", path, { part: "fmt " });
  const view = viewOf(body);
  const [tag, channels, rate] = [view.getUint16(0, true), view.getUint16(2, true), view.getUint32(4, true)];
  const [frame, bits] = [view.getUint16(12, true), view.getUint16(14, true)];
  if (tag === EXTENSIBLE && body.length < 40) return recordingFault("recording.part-missing", path, { part: "fmt extension" });
  const kind = tag === EXTENSIBLE ? view.getUint16(24, true) : tag;
  const encoding = wavEncoding(kind, Math.ceil(bits / 8) * 8);
  if (encoding === null)
    return recordingFault("recording.encoding-unsupported", path, { encoding: `0x${kind.toString(16)}, ${bits} bits` });
  if (channels === 0) return recordingFault("recording.header-contradicts", path, { field: "channels", got: "0", expected: "1" });
  if (channels > MOST_CHANNELS) return recordingFault("recording.too-many", path, { of: "channels", limit: MOST_CHANNELS });
  if (rate === 0 || rate > MOST_RATE)
    return recordingFault("recording.header-contradicts", path, { field: "sample rate", got: String(rate), expected: `1 - ${MOST_RATE}` });
  const wanted = channels * BYTES_OF[encoding];
  if (frame !== wanted)
    return recordingFault("recording.header-contradicts", path, { field: "block align", got: String(frame), expected: String(wanted) });
  return recordingValue({ format: { encoding, channels, rate } });
}

function dataAt(source: ByteSource, offset: number, length: number, { format, longData }: Found): RecordingResult<WavHeader> {
  const path = `byte ${offset - 8}`;
  if (format === null) return recordingFault("recording.part-missing", path, { part: "fmt " });
  const present = source.size - offset;
  const piped = PIPE_LENGTHS.includes(length) && length > present && longData === null;
  const open = piped || (length === 0 && present > 0);
  const promised = length === UNKNOWN_LENGTH && longData !== null ? longData : length;
  if (!open && promised > present)
    return recordingFault("recording.truncated", path, { promised: offset + promised, present: source.size });
  const frame = format.channels * BYTES_OF[format.encoding];
  const bytes = open ? present : promised;
  if (!open && bytes % frame !== 0)
    return recordingFault("recording.header-contradicts", path, { field: "data length", got: String(bytes), expected: `n x ${frame}` });
  const count = Math.floor(bytes / frame);
  if (count === 0) return recordingFault("recording.no-samples", path, {});
  return recordingValue({ ...format, dataOffset: offset, count, openLength: open });
}
