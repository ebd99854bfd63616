import { type ByteSource, readUpTo } from "../bytes/byte-source.js";
import { decodeText } from "../bytes/decode-text.js";
import { type ColumnName, unitFor } from "../channels/column-name.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import { columnsOf } from "./columns-of.js";
import { type Dialect, isRow, sniffDialect } from "./dialect.js";
import { splitLine } from "./split-line.js";

/** What stands before a table's rows of numbers. */
export interface TableHead {
  readonly dialect: Dialect;
  readonly columns: readonly ColumnName[];
  /** Byte and line (from 1) at which the first row starts. */
  readonly dataOffset: number;
  readonly dataLine: number;
}

/** Enough for any preamble and its first rows. */
const HEAD_BYTES = 64 * 1024;
/** Nearly every preamble is shorter. */
const SNIFFED_LINES = 150;
const MOST_COLUMNS = 1024;
/** Excel's hint of the separator. */
const HINT = /^sep=(.)$/i;
const COMMENT = /^(?:#|%|\/\/)/;

interface Line {
  readonly text: string;
  readonly offset: number;
  readonly number: number;
}

/** Finds separator, decimal sign, column names and the first row. The names are on the last line before the rows that has as many cells, units perhaps on a line between. */
export async function readTableHead(source: ByteSource): Promise<RecordingResult<TableHead>> {
  const bytes = await readUpTo(source, 0, HEAD_BYTES);
  const lines = linesOf(bytes, bytes.length === source.size);
  const hint = HINT.exec(lines[0]?.text ?? "")?.[1];
  const table = lines.filter(({ text }) => text.trim() !== "" && !HINT.test(text));
  const plain = table.filter(({ text }) => !COMMENT.test(text));
  const texts = plain.map(({ text }) => text);
  const sniffed = sniffDialect(texts.slice(0, SNIFFED_LINES)) ?? sniffDialect(texts);
  if (sniffed === null) return recordingFault(table.length === 0 ? "recording.empty" : "recording.no-samples", "", {});
  const dialect = hint === undefined ? sniffed.dialect : { ...sniffed.dialect, separator: hint };
  // A setting in the preamble, "rate,100", is a row of its own width.
  const isFirst = (cells: readonly string[]): boolean => cells.length === sniffed.columns && isRow(cells, dialect.mark);
  const row = plain.find(({ text }) => isFirst(splitLine(text, dialect.separator)));
  if (row === undefined) return recordingFault("recording.no-samples", "", {});
  const width = splitLine(row.text, dialect.separator).length;
  const before = table.slice(0, table.indexOf(row)).map(({ text }) => splitLine(text.replace(COMMENT, ""), dialect.separator));
  const headings = headingsOf(before, width);
  if (headings === null) return recordingFault("recording.no-column-names", `line ${row.number}`, {});
  return headOf(headings, dialect, row);
}

function headOf(headings: readonly string[], dialect: Dialect, row: Line): RecordingResult<TableHead> {
  if (headings.length > MOST_COLUMNS)
    return recordingFault("recording.too-many", `line ${row.number}`, { of: "channels", limit: MOST_COLUMNS });
  // A separator at the end of every line makes a column that nobody meant.
  const named = headings.slice(0, headings.findLastIndex((heading) => heading !== "") + 1);
  const columns = columnsOf(named, splitLine(row.text, dialect.separator), dialect.mark);
  return recordingValue({ dialect, columns, dataOffset: row.offset, dataLine: row.number });
}

/** The names above a row; where a line of units stands between them, each unit goes to its name. */
function headingsOf(before: readonly (readonly string[])[], width: number): readonly string[] | null {
  const fits = (cells: readonly string[] | undefined): cells is readonly string[] =>
    cells !== undefined && (cells.length === width || (cells.length === width + 1 && cells.at(-1) === ""));
  const last = before.at(-1);
  if (!fits(last)) return null;
  const names = before.at(-2);
  const isUnits = last.some((cell) => cell !== "") && last.every((cell, k) => cell === "" || unitFor(names?.[k] ?? "", cell) !== null);
  if (!isUnits || !fits(names)) return last.slice(0, width);
  return names.slice(0, width).map((name, k) => (last[k] === "" || last[k] === undefined ? name : `${name} (${bare(last[k])})`));
}

const bare = (unit: string): string => unit.replace(/^[[(](.*)[\])]$/, "$1");

const NEWLINE = 0x0a;

/** The lines of the first bytes; the last one only where it is whole. */
function linesOf(bytes: Uint8Array, whole: boolean): readonly Line[] {
  const lines: Line[] = [];
  let offset = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
  for (let number = 1; offset < bytes.length; number++) {
    const end = bytes.indexOf(NEWLINE, offset);
    if (end < 0 && !whole) break;
    const stop = end < 0 ? bytes.length : end;
    lines.push({ text: decodeText(bytes.subarray(offset, stop)).replace(/\r$/, ""), offset, number });
    offset = stop + 1;
  }
  return lines;
}
