import { type ByteSource, readUpTo } from "../bytes/byte-source.js";
import { lineChunks } from "../bytes/chunked-lines.js";
import { decodeText } from "../bytes/decode-text.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import { HEADER_LINES, readUffHeader, type UffHeader } from "./uff-header.js";

/** How the bytes of a binary set are written. */
export interface UffBinary {
  readonly littleEndian: boolean;
}

/** A data set 58 and where its values lie: [dataOffset, dataEnd). */
export interface UffSet {
  readonly header: UffHeader;
  readonly dataOffset: number;
  readonly dataEnd: number;
  readonly binary: UffBinary | null;
}

/** A head is 13 lines of some 80 characters. */
const HEAD_BYTES = 4096;
const MOST_SETS = 4096;
const NEWLINE = 0x0a;
const [BLANK, RETURN, MINUS, ONE] = [0x20, 0x0d, 0x2d, 0x31];

/** Finds every data set 58 of a universal file; sets of other kinds are stepped over. */
export async function findUffSets(source: ByteSource): Promise<RecordingResult<readonly UffSet[]>> {
  const sets: UffSet[] = [];
  let at = 0;
  for (let count = 0; count < MOST_SETS; count++) {
    const begin = await nextSet(source, at);
    if (!begin.ok) return begin;
    if (begin.value === null) return recordingValue(sets);
    const { kind, bodyOffset } = begin.value;
    if (!/^58b?$/i.test(kind.slice(0, 7).trim())) {
      const end = await endOfText(source, bodyOffset);
      if (end === null) return recordingFault("recording.part-missing", `byte ${bodyOffset}`, { part: "    -1" });
      at = end.next;
      continue;
    }
    const set = await setAt(source, kind, bodyOffset);
    if (!set.ok) return set;
    sets.push(set.value.set);
    at = set.value.next;
  }
  return recordingFault("recording.too-many", `byte ${at}`, { of: "sets", limit: MOST_SETS });
}

interface Head {
  readonly lines: readonly string[];
  /** The byte after each line. */
  readonly ends: readonly number[];
}

/** The first lines from a byte on, as many as end within HEAD_BYTES. */
async function linesFrom(source: ByteSource, offset: number, most: number): Promise<Head> {
  const bytes = await readUpTo(source, offset, HEAD_BYTES);
  const lines: string[] = [];
  const ends: number[] = [];
  for (let at = 0; lines.length < most && at < bytes.length; ) {
    const end = bytes.indexOf(NEWLINE, at);
    if (end < 0 && offset + bytes.length < source.size) break;
    const stop = end < 0 ? bytes.length : end;
    lines.push(decodeText(bytes.subarray(at, stop)).replace(/\r$/, ""));
    at = Math.min(stop + 1, bytes.length);
    ends.push(offset + at);
  }
  return { lines, ends };
}

/** The opening "    -1" and the kind of the set, from a byte on; null where nothing but blanks follows. */
async function nextSet(
  source: ByteSource,
  offset: number,
): Promise<RecordingResult<{ readonly kind: string; readonly bodyOffset: number } | null>> {
  let at = offset;
  while (at < source.size) {
    const { lines, ends } = await linesFrom(source, at, 16);
    const first = lines.findIndex((line) => line.trim() !== "");
    if (lines.length === 0) return recordingFault("recording.part-missing", `byte ${at}`, { part: "    -1" });
    if (first < 0) {
      at = ends.at(-1) as number;
      continue;
    }
    if ((lines[first] as string).trim() !== "-1") return recordingFault("recording.part-missing", `byte ${at}`, { part: "    -1" });
    const kind = lines[first + 1];
    if (kind !== undefined) return recordingValue({ kind, bodyOffset: ends[first + 1] as number });
    if (first === 0) return recordingFault("recording.part-missing", `byte ${at}`, { part: "58" });
    at = ends[first - 1] as number;
  }
  return recordingValue(null);
}

async function setAt(
  source: ByteSource,
  kind: string,
  bodyOffset: number,
): Promise<RecordingResult<{ readonly set: UffSet; readonly next: number }>> {
  const place = `byte ${bodyOffset}`;
  const { lines, ends } = await linesFrom(source, bodyOffset, HEADER_LINES);
  const header = readUffHeader(lines, place);
  if (!header.ok) return header;
  const dataOffset = ends[HEADER_LINES - 1] as number;
  if (/b/i.test(kind.slice(0, 7))) return binarySet(source, kind, header.value, dataOffset);
  // Every value takes at least a digit and a blank.
  const present = source.size - dataOffset;
  if (header.value.count * 2 > present + 1)
    return recordingFault("recording.truncated", place, { promised: dataOffset + header.value.count * 2, present: source.size });
  const end = await endOfText(source, dataOffset);
  if (end === null) return recordingFault("recording.part-missing", place, { part: "    -1" });
  return recordingValue({ set: { header: header.value, dataOffset, dataEnd: end.start, binary: null }, next: end.next });
}

async function binarySet(
  source: ByteSource,
  kind: string,
  header: UffHeader,
  dataOffset: number,
): Promise<RecordingResult<{ readonly set: UffSet; readonly next: number }>> {
  const place = `byte ${dataOffset}`;
  const [order, float, , bytes] = [kind.slice(7, 13), kind.slice(13, 19), kind.slice(19, 31), kind.slice(31, 43)].map(Number);
  if (order !== 1 && order !== 2)
    return recordingFault("recording.header-contradicts", place, { field: "byte order", got: kind.slice(7, 13).trim(), expected: "1, 2" });
  if (float !== 2) return recordingFault("recording.encoding-unsupported", place, { encoding: `58b: ${kind.slice(13, 19).trim()}` });
  if (!Number.isInteger(bytes) || (bytes as number) < 0)
    return recordingFault("recording.header-contradicts", place, { field: "bytes", got: kind.slice(31, 43).trim(), expected: ">= 0" });
  const dataEnd = dataOffset + (bytes as number);
  if (dataEnd > source.size) return recordingFault("recording.truncated", place, { promised: dataEnd, present: source.size });
  return closed(source, dataEnd, { header, dataOffset, dataEnd, binary: { littleEndian: order === 1 } });
}

/** The closing "    -1" follows the bytes directly; where it does not, their number is wrong. */
async function closed(
  source: ByteSource,
  dataEnd: number,
  set: UffSet,
): Promise<RecordingResult<{ readonly set: UffSet; readonly next: number }>> {
  const { lines, ends } = await linesFrom(source, dataEnd, 2);
  const marker = lines.findIndex((line) => line.trim() !== "");
  if (marker < 0) return recordingFault("recording.part-missing", `byte ${dataEnd}`, { part: "    -1" });
  const found = (lines[marker] as string).trim();
  if (found !== "-1")
    return recordingFault("recording.header-contradicts", `byte ${dataEnd}`, { field: "58b", got: found.slice(0, 20), expected: "    -1" });
  return recordingValue({ set, next: ends[marker] as number });
}

/** The closing "    -1" of a set of text: where it starts, and the byte after its line; null where the file ends without one. */
async function endOfText(source: ByteSource, offset: number): Promise<{ readonly start: number; readonly next: number } | null> {
  for await (const chunk of lineChunks(source, offset)) {
    if (chunk === null) return null;
    const { bytes } = chunk;
    for (let at = 0; at < bytes.length; ) {
      const found = bytes.indexOf(NEWLINE, at);
      const end = found < 0 ? bytes.length : found;
      if (isMarker(bytes, at, end)) return { start: chunk.offset + at, next: chunk.offset + Math.min(end + 1, bytes.length) };
      at = end + 1;
    }
  }
  return null;
}

/** Whether bytes[from, to) are blanks, "-1" and blanks. */
function isMarker(bytes: Uint8Array, from: number, to: number): boolean {
  let at = from;
  while (at < to && bytes[at] === BLANK) at++;
  if (bytes[at] !== MINUS || bytes[at + 1] !== ONE || at + 2 > to) return false;
  for (at += 2; at < to; at++) if (bytes[at] !== BLANK && bytes[at] !== RETURN) return false;
  return true;
}
