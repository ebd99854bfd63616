import type { RecordingFault } from "@halfturn/engine/findings";
import { decodeText } from "../bytes/decode-text.js";
import { parseNumber } from "../bytes/parse-number.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import { cellValue, isMissing } from "./cell-value.js";
import { momentSeconds } from "./moment.js";
import { splitLine } from "./split-line.js";
import type { TableHead } from "./table-head.js";

/** Rows as columns, filled from the top; `count` rows are filled. */
export interface Rows {
  readonly columns: readonly Float64Array[];
  count: number;
}

/** Parses whole lines into rows. */
export interface RowParser {
  /** Reads lines from bytes[at] until the rows are full or the bytes end; gives the place it came to. `last`: no line end follows the bytes. */
  readonly parse: (bytes: Uint8Array, at: number, last: boolean, rows: Rows) => RecordingResult<number>;
  /** The line, from 1, that comes next. */
  readonly line: () => number;
  /** Whether the last line of the file broke off before its last cell, and was left out. */
  readonly brokeOff: () => boolean;
}

const [NEWLINE, RETURN, QUOTE, HASH, BLANK] = [0x0a, 0x0d, 0x22, 0x23, 0x20];
/** Of a cell that is no number, as much is shown. */
const SHOWN = 40;

/** A parser of the wanted columns of a table: `slots[c]` is where column c goes, -1 for nowhere. */
export function rowParser({ dialect, columns, dataLine }: TableHead, slots: Int32Array): RowParser {
  const separator = dialect.separator.charCodeAt(0);
  const { mark } = dialect;
  const width = columns.length;
  let line = dataLine;
  let broken = false;

  const columnsDiffer = (got: number): RecordingFault =>
    recordingFault("recording.columns-differ", `line ${line}`, { line, got, expected: width });
  const notANumber = (column: number, found: string): RecordingFault =>
    recordingFault("recording.not-a-number", `line ${line}`, { line, column: columns[column]?.id ?? "", found: found.slice(0, SHOWN) });

  /** Puts a cell that is no number: nothing where it says that there is none, and a moment in a column of times. */
  const putWords = (text: string, cell: number, rows: Rows): RecordingFault | null => {
    const moment = columns[cell]?.quantity === "time" ? momentSeconds(text) : null;
    if (moment === null && !isMissing(text)) return notANumber(cell, text);
    (rows.columns[slots[cell] as number] as Float64Array)[rows.count] = moment ?? Number.NaN;
    return null;
  };

  /** Puts one cell, [from, to), into its place; null where it is well. */
  const putCell = (bytes: Uint8Array, from: number, to: number, cell: number, rows: Rows): RecordingFault | null => {
    if (cell >= width) return to > from ? columnsDiffer(cell + 1) : null;
    const slot = slots[cell] as number;
    if (slot < 0) return null;
    const value = parseNumber(bytes, from, to, mark);
    if (!Number.isNaN(value)) (rows.columns[slot] as Float64Array)[rows.count] = value;
    else return putWords(decodeText(bytes.subarray(from, Math.min(to, from + 4 * SHOWN))), cell, rows);
    return null;
  };

  /** One line, [from, to); true where it made a row. */
  const parseLine = (bytes: Uint8Array, from: number, to: number, rows: Rows): RecordingResult<boolean> => {
    let cell = 0;
    for (let at = from; at <= to; cell++) {
      let end = at;
      while (end < to && bytes[end] !== separator) end++;
      const fault = putCell(bytes, at, end, cell, rows);
      if (fault !== null) return fault;
      at = end + 1;
    }
    return rowOf(cell, rows);
  };

  const parseQuoted = (text: string, rows: Rows): RecordingResult<boolean> => {
    const cells = splitLine(text, dialect.separator);
    for (const [cell, content] of cells.entries()) {
      if (cell >= width && content !== "") return columnsDiffer(cell + 1);
      const slot = cell < width ? (slots[cell] as number) : -1;
      if (slot < 0) continue;
      const value = cellValue(content, mark);
      if (value.kind === "number") (rows.columns[slot] as Float64Array)[rows.count] = value.value;
      else {
        const fault = putWords(content, cell, rows);
        if (fault !== null) return fault;
      }
    }
    return rowOf(cells.length, rows);
  };

  const rowOf = (cells: number, rows: Rows): RecordingResult<boolean> => {
    if (cells < width) return columnsDiffer(cells);
    rows.count++;
    return recordingValue(true);
  };

  const lineAt = (bytes: Uint8Array, from: number, to: number, quotes: boolean, rows: Rows): RecordingResult<boolean> => {
    let start = from;
    while (start < to && bytes[start] === BLANK) start++;
    if (start === to || bytes[start] === HASH) return recordingValue(false);
    if (!quotes || !bytes.subarray(from, to).includes(QUOTE)) return parseLine(bytes, from, to, rows);
    return parseQuoted(decodeText(bytes.subarray(from, to)), rows);
  };

  return {
    line: () => line,
    brokeOff: () => broken,
    parse: (bytes, at, last, rows) => {
      const capacity = rows.columns[0]?.length ?? 0;
      const quotes = bytes.includes(QUOTE, at);
      let place = at;
      while (place < bytes.length && rows.count < capacity) {
        const found = bytes.indexOf(NEWLINE, place);
        const end = found < 0 ? bytes.length : found;
        const stop = end > place && bytes[end - 1] === RETURN ? end - 1 : end;
        const read = lineAt(bytes, place, stop, quotes, rows);
        // A logger that lost power ends within a line: what came before it is whole.
        if (!read.ok && !(found < 0 && last)) return read;
        if (!read.ok) broken = true;
        line++;
        place = end + 1;
      }
      return recordingValue(Math.min(place, bytes.length));
    },
  };
}
