import type { LongWork } from "@halfturn/engine/uncertainty";
import { encodeText } from "../bytes/decode-text.js";
import { writtenUnit } from "../channels/written-unit.js";
import type { Block, Channel, Recording } from "../recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";

/** How a table is written. */
export interface TableForm {
  readonly separator: "," | ";" | "\t";
  readonly decimal: "." | ",";
}

/** A recording as a table in UTF-8, every number with all its digits. Channels on clocks of their own follow a time column of their own. */
export async function* writeCsv(recording: Recording, form: TableForm, work?: LongWork): AsyncGenerator<RecordingResult<Uint8Array>> {
  const { separator, decimal } = form;
  if (recording.tracks.length === 0) {
    yield recordingFault("recording.cannot-hold", "", { format: "CSV", what: "nothing" });
    return;
  }
  const headings = recording.tracks.flatMap(({ channels }, track) => [
    track === 0 ? "time_s" : `clock${track + 1}_time_s`,
    ...channels.map(headingOf),
  ]);
  yield recordingValue(encodeText(`${headings.map((name) => quoted(name, separator)).join(separator)}\n`));
  const cursors = recording.tracks.map(({ channels }, index) => cursorOf(recording, index, channels, work));
  const text = (value: number): string => (Number.isNaN(value) ? "" : decimal === "," ? String(value).replace(".", ",") : String(value));
  for (;;) {
    const rows = await nextRows(cursors);
    if (!rows.ok) {
      yield rows;
      return;
    }
    if (rows.value.length === 0) return;
    yield recordingValue(encodeText(rows.value.map((cells) => `${cells.map(text).join(separator)}\n`).join("")));
  }
}

const STRETCH = 4096;

/** The next rows of all tracks side by side; none where every track has ended. */
async function nextRows(
  cursors: readonly (() => Promise<RecordingResult<Row>>)[],
): Promise<RecordingResult<readonly (readonly number[])[]>> {
  const lines: (readonly number[])[] = [];
  while (lines.length < STRETCH) {
    const rows: Row[] = [];
    for (const cursor of cursors) {
      const next = await cursor();
      if (!next.ok) return next;
      rows.push(next.value);
    }
    if (rows.every(({ done }) => done)) break;
    lines.push(rows.flatMap(({ cells }) => cells));
  }
  return recordingValue(lines);
}

const quoted = (name: string, separator: string): string =>
  name.includes(separator) || name.includes('"') ? `"${name.replaceAll('"', '""')}"` : name;

function headingOf(channel: Channel): string {
  return `${channel.name}${writtenUnit(channel).suffix}`;
}

interface Row {
  readonly cells: readonly number[];
  readonly done: boolean;
}

/** Takes a track row by row; empty cells after its end. */
function cursorOf(recording: Recording, track: number, channels: readonly Channel[], work?: LongWork): () => Promise<RecordingResult<Row>> {
  const clock = recording.tracks[track]?.clock;
  const blocks = recording.read({ track, channels: channels.map((_, k) => k) }, work)[Symbol.asyncIterator]();
  const factors = channels.map((channel) => writtenUnit(channel).perSi);
  let block: Block | null = null;
  let at = 0;
  const ended: Row = { cells: new Array<number>(channels.length + 1).fill(Number.NaN), done: true };
  return async () => {
    while (block === null || at >= lengthOf(block)) {
      const next = await blocks.next();
      if (next.done) return recordingValue(ended);
      if (!next.value.ok) return next.value;
      block = next.value.value;
      at = 0;
    }
    const even = clock?.kind === "even" ? clock.start + (block.first + at) / clock.rate : Number.NaN;
    const cells = [block.times?.[at] ?? even, ...block.values.map((values, k) => (values[at] as number) * (factors[k] as number))];
    at++;
    return recordingValue({ cells, done: false });
  };
}

const lengthOf = (block: Block): number => block.values[0]?.length ?? 0;
