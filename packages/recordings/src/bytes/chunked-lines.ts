import { type ByteSource, readUpTo } from "./byte-source.js";

/** Whole lines of a text: bytes[from, to) ends with the last byte of a line, or of the file. */
export interface LineChunk {
  readonly bytes: Uint8Array;
  /** Where in the source its first byte stands. */
  readonly offset: number;
  readonly last: boolean;
}

const NEWLINE = 0x0a;
const CHUNK = 256 * 1024;
/** No line of a recording is longer; a file without line ends is not read into memory to find that out. */
export const LONGEST_LINE = 1024 * 1024;

/** A text in stretches of whole lines. Ends with null where a line is longer than LONGEST_LINE. */
export async function* lineChunks(source: ByteSource, from: number, chunk = CHUNK): AsyncGenerator<LineChunk | null> {
  let carried = new Uint8Array(0);
  let offset = from;
  let next = from;
  while (next < source.size) {
    const read = await readUpTo(source, next, chunk);
    if (read.length === 0) break;
    next += read.length;
    const bytes = joined(carried, read);
    const last = next >= source.size;
    const end = last ? bytes.length : bytes.lastIndexOf(NEWLINE) + 1;
    if (end > 0) yield { bytes: bytes.subarray(0, end), offset, last };
    carried = bytes.slice(end);
    offset += end;
    if (carried.length > LONGEST_LINE) {
      yield null;
      return;
    }
  }
}

function joined(first: Uint8Array, second: Uint8Array): Uint8Array {
  if (first.length === 0) return second;
  const both = new Uint8Array(first.length + second.length);
  both.set(first);
  both.set(second, first.length);
  return both;
}
