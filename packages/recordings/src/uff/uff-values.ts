import { type ByteSource, readUpTo } from "../bytes/byte-source.js";
import { LONGEST_LINE, lineChunks } from "../bytes/chunked-lines.js";
import { POINT, parseNumber } from "../bytes/parse-number.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import type { UffSet } from "./uff-sets.js";

/** Numbers of a set as they follow one another: ordinates alone, or pairs of abscissa and ordinate. */
export type Numbers = AsyncGenerator<RecordingResult<Float64Array>>;

const NEWLINE = 0x0a;
const RETURN = 0x0d;
const STRETCH = 256 * 1024;
const [SINGLE, DOUBLE] = [13, 20];

/** The numbers of a set, in stretches of whole pairs. Ends after the first fault; as many numbers come as the header promises, or a fault. */
export const uffNumbers = (source: ByteSource, set: UffSet, stretch = STRETCH): Numbers =>
  set.binary === null ? textNumbers(source, set, stretch) : binaryNumbers(source, set, set.binary.littleEndian, stretch);

const perValue = (set: UffSet): number => (set.header.even ? 1 : 2);

/** Width of the n-th field of a line. */
function fieldWidths({ header }: UffSet): readonly number[] {
  if (header.ordinate === "single") return [SINGLE];
  return header.even ? [DOUBLE] : [SINGLE, DOUBLE];
}

async function* textNumbers(source: ByteSource, set: UffSet, stretch: number): Numbers {
  const widths = fieldWidths(set);
  const wanted = set.header.count * perValue(set);
  const upTo: ByteSource = { size: set.dataEnd, read: source.read };
  let seen = 0;
  let odd: number[] = [];
  for await (const chunk of lineChunks(upTo, set.dataOffset, stretch)) {
    if (chunk === null) {
      yield recordingFault("recording.line-too-long", `byte ${set.dataOffset}`, { line: 0, limit: LONGEST_LINE });
      return;
    }
    const numbers = odd;
    const bad = numbersOf(chunk.bytes, widths, numbers);
    if (bad !== null) {
      const found = String.fromCharCode(...chunk.bytes.subarray(bad, bad + 20)).trim();
      yield recordingFault("recording.not-a-number", `byte ${chunk.offset + bad}`, { line: 0, column: set.header.column.id, found });
      return;
    }
    const whole = numbers.length - (numbers.length % perValue(set));
    odd = numbers.slice(whole);
    seen += whole;
    if (seen > wanted) break;
    if (whole > 0) yield recordingValue(Float64Array.from(numbers.slice(0, whole)));
  }
  if (seen + odd.length !== wanted)
    yield recordingFault("recording.header-contradicts", `byte ${set.dataOffset}`, {
      field: "number of values",
      got: String(set.header.count),
      expected: String(Math.floor((seen + odd.length) / perValue(set))),
    });
}

/** Appends the numbers of whole lines; gives the place of the first that is none, or null. */
function numbersOf(bytes: Uint8Array, widths: readonly number[], out: number[]): number | null {
  for (let at = 0; at < bytes.length; ) {
    const found = bytes.indexOf(NEWLINE, at);
    const end = found < 0 ? bytes.length : found;
    const stop = end > at && bytes[end - 1] === RETURN ? end - 1 : end;
    const before = out.length;
    if (!fixedFields(bytes, at, stop, widths, out)) {
      out.length = before;
      const bad = freeFields(bytes, at, stop, out);
      if (bad !== null) return bad;
    }
    at = end + 1;
  }
  return null;
}

const isBlank = (byte: number | undefined): boolean => byte === 0x20 || byte === 0x09;
const isSign = (byte: number | undefined): boolean => byte === 0x2d || byte === 0x2b;

/** Fields of fixed width, as Fortran writes them, touching perhaps. False where the line is not written so. */
function fixedFields(bytes: Uint8Array, from: number, to: number, widths: readonly number[], out: number[]): boolean {
  let at = from;
  for (let field = 0; at < to; field++) {
    const end = Math.min(to, at + (widths[field % widths.length] as number));
    // A number that goes on across the border of two fields is written in columns of other widths.
    if (end < to && !isBlank(bytes[end - 1]) && !isBlank(bytes[end]) && !isSign(bytes[end])) return false;
    let start = at;
    while (start < end && isBlank(bytes[start])) start++;
    if (start < end) {
      const value = parseNumber(bytes, start, end, POINT);
      if (Number.isNaN(value)) return false;
      out.push(value);
    } else if (!onlyBlanks(bytes, end, to)) return false;
    at = end;
  }
  return true;
}

function onlyBlanks(bytes: Uint8Array, from: number, to: number): boolean {
  for (let at = from; at < to; at++) if (!isBlank(bytes[at])) return false;
  return true;
}

/** Numbers parted by blanks. */
function freeFields(bytes: Uint8Array, from: number, to: number, out: number[]): number | null {
  for (let at = from; at < to; ) {
    while (at < to && isBlank(bytes[at])) at++;
    let end = at;
    while (end < to && !isBlank(bytes[end])) end++;
    if (end === at) break;
    const value = parseNumber(bytes, at, end, POINT);
    if (Number.isNaN(value)) return at;
    out.push(value);
    at = end;
  }
  return null;
}

type FloatReader = (view: DataView, at: number, littleEndian: boolean) => number;
const single: FloatReader = (view, at, littleEndian) => view.getFloat32(at, littleEndian);
const double: FloatReader = (view, at, littleEndian) => view.getFloat64(at, littleEndian);

/** How each number of a value is written; null where the promised bytes fit no way. The layout says a single abscissa, and many writers give it as a double. */
function layoutOf({ header, dataOffset, dataEnd }: UffSet): readonly { readonly read: FloatReader; readonly width: number }[] | null {
  const four = { read: single, width: 4 };
  const eight = { read: double, width: 8 };
  const ordinate = header.ordinate === "single" ? four : eight;
  const layouts = header.even
    ? [[ordinate]]
    : [
        [four, ordinate],
        [eight, ordinate],
      ];
  const bytes = dataEnd - dataOffset;
  return layouts.find((layout) => layout.reduce((sum, { width }) => sum + width, 0) * header.count === bytes) ?? null;
}

async function* binaryNumbers(source: ByteSource, set: UffSet, littleEndian: boolean, stretch: number): Numbers {
  const { header, dataOffset, dataEnd } = set;
  const layout = layoutOf(set);
  if (layout === null) {
    const expected = String(header.count * (header.ordinate === "single" ? 4 : 8) * perValue(set));
    yield recordingFault("recording.header-contradicts", `byte ${dataOffset}`, {
      field: "bytes",
      got: String(dataEnd - dataOffset),
      expected,
    });
    return;
  }
  const width = layout.reduce((sum, one) => sum + one.width, 0);
  const most = Math.max(1, Math.floor(stretch / width));
  for (let first = 0; first < header.count; first += most) {
    const values = Math.min(most, header.count - first);
    const place = dataOffset + first * width;
    const bytes = await readUpTo(source, place, values * width);
    if (bytes.length < values * width) {
      yield recordingFault("recording.truncated", `byte ${place}`, { promised: dataEnd, present: place + bytes.length });
      return;
    }
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    const out = new Float64Array(values * layout.length);
    for (let k = 0, at = 0; k < out.length; k++) {
      const one = layout[k % layout.length] as (typeof layout)[number];
      out[k] = one.read(view, at, littleEndian);
      at += one.width;
    }
    yield recordingValue(out);
  }
}
