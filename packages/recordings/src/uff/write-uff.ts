import type { LongWork } from "@halfturn/engine/uncertainty";
import { encodeText } from "../bytes/decode-text.js";
import { writtenUnit } from "../channels/written-unit.js";
import type { Block, Channel, Clock, Recording } from "../recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import { fittedNumber } from "./fitted-number.js";

/** How a universal file is written: text (58), or bytes (58b) in one order or the other. Values are doubles. */
export type UffForm = { readonly kind: "text" } | { readonly kind: "binary"; readonly littleEndian: boolean };

/** Codes of data types; 0 says nothing. */
const TYPES: { readonly [Q in Channel["quantity"]]?: number } = { displacement: 8, velocity: 11, acceleration: 12, pressure: 15 };

/** A recording as a universal file, one set per channel, in the units of writtenUnit. Samples without a value are left out of a stamped clock; an even one cannot do without: a fault. */
export async function* writeUff(recording: Recording, form: UffForm, work?: LongWork): AsyncGenerator<RecordingResult<Uint8Array>> {
  if (recording.tracks.length === 0) yield recordingFault("recording.cannot-hold", "", { format: "UFF", what: "nothing" });
  for (const [track, { clock, channels }] of recording.tracks.entries()) {
    for (const [index, channel] of channels.entries()) {
      const blocks = () => recording.read({ track, channels: [index] }, work);
      for await (const part of setOf(channel, clock, form, blocks)) {
        yield part;
        if (!part.ok) return;
      }
    }
  }
}

type Blocks = () => AsyncIterable<RecordingResult<Block>>;

async function* setOf(channel: Channel, clock: Clock, form: UffForm, blocks: Blocks): AsyncGenerator<RecordingResult<Uint8Array>> {
  const counted = clock.kind === "even" ? recordingValue(clock.count) : await countOf(blocks);
  if (!counted.ok) {
    yield counted;
    return;
  }
  yield recordingValue(encodeText(headOf(channel, clock, form, counted.value)));
  const { perSi } = writtenUnit(channel);
  let pending: number[] = [];
  for await (const block of blocks()) {
    if (!block.ok) {
      yield block;
      return;
    }
    const numbers = numbersOf(block.value, perSi);
    if (clock.kind === "even" && numbers.length !== block.value.values[0]?.length) {
      yield recordingFault("recording.cannot-hold", `channel ${channel.id}`, { format: "UFF", what: "missing-values" });
      return;
    }
    pending = pending.concat(numbers);
    const whole = form.kind === "text" ? pending.length - (pending.length % 4) : pending.length;
    yield recordingValue(packed(pending.slice(0, whole), clock, form));
    pending = pending.slice(whole);
  }
  yield recordingValue(packed(pending, clock, form));
  yield recordingValue(encodeText("    -1\n"));
}

async function countOf(blocks: Blocks): Promise<RecordingResult<number>> {
  let count = 0;
  for await (const block of blocks()) {
    if (!block.ok) return block;
    count += numbersOf(block.value, 1).length / 2;
  }
  return recordingValue(count);
}

/** Values, or pairs of time and value where samples have times; without those that have no value. */
function numbersOf({ times, values }: Block, perSi: number): readonly number[] {
  const numbers: number[] = [];
  for (const [k, value] of (values[0] as Float64Array).entries()) {
    if (Number.isNaN(value)) continue;
    if (times !== null) numbers.push(times[k] as number);
    numbers.push(value * perSi);
  }
  return numbers;
}

const E20 = (value: number): string =>
  value
    .toExponential(12)
    .replace(/e([+-])(\d)$/, "e$10$2")
    .toUpperCase()
    .padStart(20);
const E13 = (value: number): string => fittedNumber(value, 12).padStart(13);

function packed(numbers: readonly number[], clock: Clock, form: UffForm): Uint8Array {
  if (form.kind === "binary") {
    const view = new DataView(new ArrayBuffer(numbers.length * 8));
    for (const [k, value] of numbers.entries()) view.setFloat64(k * 8, value, form.littleEndian);
    return new Uint8Array(view.buffer);
  }
  const paired = clock.kind === "stamped";
  let text = "";
  for (const [k, value] of numbers.entries()) {
    text += paired && k % 2 === 0 ? E13(value) : E20(value);
    if (k % 4 === 3 || k === numbers.length - 1) text += "\n";
  }
  return encodeText(text);
}

const integer = (value: number, width: number): string => String(value).padStart(width);
const axis = (code: number, label: string, unit: string): string =>
  `${integer(code, 10)}${integer(0, 5).repeat(3)} ${label.padEnd(20)} ${unit.padEnd(20)}`;

/** Blocks are numbered lines of at most 80 characters; a name may hold 80. Letters beyond ASCII would count as more bytes than columns. */
function headOf(channel: Channel, clock: Clock, form: UffForm, count: number): string {
  const { name, quantity } = channel;
  const even = clock.kind === "even";
  const perValue = even ? 8 : 16;
  const tag =
    form.kind === "text"
      ? "    58"
      : `    58b${integer(form.littleEndian ? 1 : 2, 6)}${integer(2, 6)}${integer(11, 12)}${integer(count * perValue, 12)}${integer(0, 6)}${integer(0, 6)}${integer(0, 12)}${integer(0, 12)}`;
  const records = [
    "    -1",
    tag,
    name.replaceAll(/[^\x20-\x7e]/g, "?").slice(0, 80),
    "NONE",
    "NONE",
    "NONE",
    "NONE",
    `${integer(1, 5)}${integer(0, 10)}${integer(0, 5)}${integer(0, 10)} ${"NONE".padEnd(10)}${integer(0, 10)}${integer(0, 4)} ${"NONE".padEnd(10)}${integer(0, 10)}${integer(0, 4)}`,
    `${integer(4, 10)}${integer(count, 10)}${integer(even ? 1 : 0, 10)}${E13(even ? clock.start : 0)}${E13(even ? 1 / clock.rate : 0)}${E13(0)}`,
    axis(17, "Time", "s"),
    axis(TYPES[quantity] ?? 0, "NONE", writtenUnit(channel).unit ?? "NONE"),
    axis(0, "NONE", "NONE"),
    axis(0, "NONE", "NONE"),
  ];
  return `${records.join("\n")}\n`;
}
