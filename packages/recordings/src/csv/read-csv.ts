import type { Finding } from "@halfturn/engine/findings";
import type { LongWork } from "@halfturn/engine/uncertainty";
import type { ByteSource } from "../bytes/byte-source.js";
import { LONGEST_LINE, lineChunks } from "../bytes/chunked-lines.js";
import { type ChannelScale, type ScaledChannel, scaledChannels } from "../channels/channel-scale.js";
import { noFullScale } from "../channels/no-full-scale.js";
import type { Block, Recording } from "../recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import { type Rows, rowParser } from "./row-parser.js";
import { readTableHead, type TableHead } from "./table-head.js";
import { type TableTrack, tableTracks } from "./table-tracks.js";

/** Rows read before they are handed on. */
const STRETCH = 8192;

/** Opens a table of text: comma, semicolon or tab, decimal point or comma, names with units above the numbers, one time column or more. */
export async function readCsv(source: ByteSource, scales: readonly ChannelScale[]): Promise<RecordingResult<Recording>> {
  const head = await readTableHead(source);
  if (!head.ok) return head;
  const scaled = scaledChannels(head.value.columns, scales);
  if (!scaled.ok) return scaled;
  const tracks = tableTracks(scaled.value);
  if (!tracks.ok) return tracks;
  return recordingValue({
    format: "csv",
    tracks: tracks.value.map(({ track }) => track),
    notes: noFullScale(tracks.value.flatMap(({ track }) => track.channels)),
    read: ({ track, channels }, work) => {
      const wanted = tracks.value[track] as TableTrack;
      return blocksOf(source, head.value, scaled.value, wanted, channels, work);
    },
  });
}

async function* blocksOf(
  source: ByteSource,
  head: TableHead,
  scaled: readonly ScaledChannel[],
  { timeColumn, timeFactor, columns }: TableTrack,
  wanted: readonly number[],
  work: LongWork = {},
): AsyncGenerator<RecordingResult<Block>> {
  const chosen = wanted.map((channel) => columns[channel] as number);
  const distinct = [timeColumn, ...new Set(chosen)];
  const slots = new Int32Array(head.columns.length).fill(-1);
  for (const [slot, column] of distinct.entries()) slots[column] = slot;
  const factors = [timeFactor, ...distinct.slice(1).map((column) => (scaled[column] as ScaledChannel).factor)];
  const outSlots = chosen.map((column) => slots[column] as number);
  const parser = rowParser(head, slots);
  let rows = emptyRows(distinct.length);
  let first = 0;
  const filled = (): Block | null => {
    const kept = timedRows(rows, factors);
    rows = emptyRows(distinct.length);
    const [times] = kept;
    if (times === undefined || times.length === 0) return null;
    const block = { first, times, values: outSlots.map((slot) => kept[slot] as Float64Array), notes: [] };
    first += times.length;
    return block;
  };
  for await (const chunk of lineChunks(source, head.dataOffset)) {
    work.signal?.throwIfAborted();
    if (chunk === null) {
      yield recordingFault("recording.line-too-long", `line ${parser.line()}`, { line: parser.line(), limit: LONGEST_LINE });
      return;
    }
    for (let at = 0; at < chunk.bytes.length; ) {
      const next = parser.parse(chunk.bytes, at, chunk.last, rows);
      if (!next.ok) {
        yield next;
        return;
      }
      at = next.value;
      const block = rows.count === STRETCH ? filled() : null;
      if (block !== null) yield recordingValue(block);
    }
    work.onProgress?.((chunk.offset + chunk.bytes.length) / source.size);
  }
  const rest = filled();
  const notes: readonly Finding[] = parser.brokeOff()
    ? [{ code: "recording.last-line-broke-off", severity: "note", path: `line ${parser.line() - 1}`, params: { line: parser.line() - 1 } }]
    : [];
  if (rest !== null || notes.length > 0)
    yield recordingValue({ ...(rest ?? { first, times: new Float64Array(0), values: outSlots.map(() => new Float64Array(0)) }), notes });
}

const emptyRows = (columns: number): Rows => ({ columns: Array.from({ length: columns }, () => new Float64Array(STRETCH)), count: 0 });

/** The rows that have a time, in SI: a column on a shorter clock ends before its table does. */
function timedRows({ columns, count }: Rows, factors: readonly number[]): readonly Float64Array[] {
  const times = columns[0] as Float64Array;
  let kept = 0;
  for (let row = 0; row < count; row++) {
    if (Number.isNaN(times[row])) continue;
    for (const [slot, column] of columns.entries()) column[kept] = (column[row] as number) * (factors[slot] as number);
    kept++;
  }
  return columns.map((column) => column.subarray(0, kept));
}
