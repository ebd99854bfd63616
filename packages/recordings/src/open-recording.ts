import { type ByteSource, readUpTo } from "./bytes/byte-source.js";
import { latin1Source, utf16Order } from "./bytes/utf16-source.js";
import type { ChannelScale } from "./channels/channel-scale.js";
import { readCsv } from "./csv/read-csv.js";
import type { Recording, RecordingFormat } from "./recording.js";
import { type RecordingResult, recordingFault } from "./recording-result.js";
import { readUff } from "./uff/read-uff.js";
import { readWav } from "./wav/read-wav.js";

/** As much of a file tells its format. */
const SNIFFED = 4096;
const UFF = /^\s*-1\s*\r?\n\s*\d+/;
/** Opens a recording of any known format, told by what is in it and not by its name. Samples are not read yet; a universal file is searched for its sets. */
export async function openRecording(source: ByteSource, scales: readonly ChannelScale[] = []): Promise<RecordingResult<Recording>> {
  const order = utf16Order(await readUpTo(source, 0, 2));
  const read = order === null ? source : latin1Source(source, order);
  const start = await readUpTo(read, 0, SNIFFED);
  if (start.length === 0) return recordingFault("recording.empty", "", {});
  const format = formatOf(start);
  if (!format.ok) return format;
  const readers = { wav: readWav, csv: readCsv, uff: readUff };
  return readers[format.value](read, scales);
}

function formatOf(start: Uint8Array): RecordingResult<Exclude<RecordingFormat, "memory">> {
  const ascii = (from: number, to: number): string => String.fromCharCode(...start.subarray(from, to));
  if (/^(?:RIFF|RF64|BW64)/.test(ascii(0, 4))) {
    if (ascii(8, 12) === "WAVE") return { ok: true, value: "wav" };
    return start.length < 12
      ? recordingFault("recording.truncated", "byte 0", { promised: 12, present: start.length })
      : recordingFault("recording.encoding-unsupported", "byte 8", { encoding: `RIFF ${printable(start.subarray(8, 12))}` });
  }
  // The head of a universal file is text, whatever its data are.
  if (UFF.test(ascii(0, 200))) return { ok: true, value: "uff" };
  if (start.includes(0)) return recordingFault("recording.unknown-format", "byte 0", { start: printable(start.subarray(0, 16)) });
  return { ok: true, value: "csv" };
}

const printable = (bytes: Uint8Array): string =>
  [...bytes].map((byte) => (byte >= 0x20 && byte < 0x7f ? String.fromCharCode(byte) : "·")).join("");
