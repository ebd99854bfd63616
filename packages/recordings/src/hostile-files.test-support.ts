import { RECORDING_FAULT_CODES } from "@halfturn/engine/findings";
import fc from "fast-check";
import { expect } from "vitest";
import { encodeText } from "./bytes/decode-text.js";
import { memoryRecording } from "./memory-recording.js";
import { openRecording } from "./open-recording.js";
import type { Recording } from "./recording.js";
import { accel, bytesOf } from "./recording-contract.test-support.js";
import type { RecordingResult } from "./recording-result.js";
import { evenChannel } from "./timing/even-channel.test-support.js";
import { slowChannel } from "./timing/slow-channel.js";

/** Sound files of a format that hostile ones are made from. */
export async function seedFiles(
  writers: readonly ((recording: Recording) => AsyncIterable<RecordingResult<Uint8Array>>)[],
): Promise<readonly Uint8Array[]> {
  const values = [Float64Array.from({ length: 40 }, (_, k) => Math.sin(k)), Float64Array.from({ length: 40 }, (_, k) => k / 8)];
  const sound = memoryRecording([
    { channels: [accel("accel_z"), accel("accel_x")], clock: { kind: "even", start: 0, rate: 200, count: 40 }, times: null, values },
  ]);
  return Promise.all(writers.map((write) => bytesOf(write(sound))));
}

/** What a header may lie with, as bytes and as text. */
const EXTREMES = [
  [0, 0, 0, 0],
  [0xff, 0xff, 0xff, 0xff],
  [0xff, 0xff, 0xff, 0x7f],
  [1, 0, 0, 0x80],
  ...["9999999999", "        -1", "-5", "NaN", "1e308", "    -1\n    58\n", "\n", "\n\n", ",", ";", "\t", '"', "0", "   ", "time_s"].map(
    (text) => [...encodeText(text)],
  ),
];

type Change = (bytes: Uint8Array) => Uint8Array;
const places = fc.double({ min: 0, max: 1, noNaN: true });
const at = (bytes: Uint8Array, place: number): number => Math.floor(place * bytes.length);

const flip: fc.Arbitrary<Change> = fc.tuple(places, fc.integer({ min: 0, max: 255 })).map(([place, value]) => (bytes) => {
  const changed = bytes.slice();
  if (changed.length > 0) changed[Math.min(at(bytes, place), changed.length - 1)] = value;
  return changed;
});
const cut: fc.Arbitrary<Change> = places.map((place) => (bytes) => bytes.slice(0, at(bytes, place)));
const drop: fc.Arbitrary<Change> = fc.tuple(places, fc.integer({ min: 1, max: 20 })).map(([place, count]) => (bytes) => {
  const from = at(bytes, place);
  return Uint8Array.from([...bytes.subarray(0, from), ...bytes.subarray(from + count)]);
});
/** Overwrites or inserts; a head is hit as often as all the rest. */
const lie: fc.Arbitrary<Change> = fc
  .tuple(places, fc.boolean(), fc.boolean(), fc.constantFrom(...EXTREMES))
  .map(([place, early, insert, extreme]) => (bytes) => {
    const from = Math.floor(place * (early ? Math.min(bytes.length, 400) : bytes.length));
    return Uint8Array.from([...bytes.subarray(0, from), ...extreme, ...bytes.subarray(from + (insert ? 0 : extreme.length))]);
  });
const twice: fc.Arbitrary<Change> = places.map((place) => (bytes) => Uint8Array.from([...bytes.subarray(0, at(bytes, place)), ...bytes]));
const change = fc.oneof(
  { weight: 4, arbitrary: lie },
  { weight: 2, arbitrary: flip },
  { weight: 1, arbitrary: cut },
  { weight: 1, arbitrary: drop },
  { weight: 1, arbitrary: twice },
);

/** Files that look like a format and are none, or lie: sound ones changed in one to six ways, and a start of one followed by anything. */
export function hostileFiles(sound: readonly Uint8Array[]): fc.Arbitrary<Uint8Array> {
  const changed = fc
    .tuple(fc.constantFrom(...sound), fc.array(change, { minLength: 1, maxLength: 6 }))
    .map(([bytes, changes]) => changes.reduce((file, apply) => apply(file), bytes));
  const started = fc
    .tuple(fc.constantFrom(...sound), fc.integer({ min: 0, max: 120 }), fc.uint8Array({ maxLength: 400 }))
    .map(([bytes, length, rest]) => Uint8Array.from([...bytes.subarray(0, length), ...rest]));
  return fc.oneof({ weight: 4, arbitrary: changed }, { weight: 1, arbitrary: started });
}

/** Far above what a file of some kilobytes takes; a file that hangs a reader takes longer. */
const LONGEST_MS = 5000;

/** Opens and reads a file to its end in every way there is. It may be refused with a known fault or read; what is read is no more than what is there. Gives whether it was refused. */
export async function survives(bytes: Uint8Array): Promise<boolean> {
  const started = performance.now();
  const asked: number[] = [];
  const source = {
    size: bytes.length,
    read: async (offset: number, length: number) => {
      asked.push(offset + length);
      return bytes.slice(offset, offset + length);
    },
  };
  const refusals: unknown[] = [];
  const note = (result: RecordingResult<unknown>): boolean => {
    if (result.ok) return true;
    expect(RECORDING_FAULT_CODES).toContain(result.code);
    expect(typeof result.path).toBe("string");
    expect(Object.values(result.params).every((value) => value !== undefined && !Number.isNaN(value))).toBe(true);
    refusals.push(result);
    return false;
  };
  const recording = await openRecording(source);
  if (note(recording) && recording.ok) {
    for (const [track, { channels }] of recording.value.tracks.entries()) {
      let samples = 0;
      for await (const block of recording.value.read({ track, channels: channels.map((_, k) => k) }))
        if (note(block) && block.ok) samples += block.value.values[0]?.length ?? 0;
      // A sample takes a byte at least.
      expect(samples).toBeLessThanOrEqual(bytes.length);
      note(await evenChannel(recording.value, track, 0));
      note(await slowChannel(recording.value, track, 0));
    }
  }
  expect(Math.max(0, ...asked)).toBeLessThanOrEqual(bytes.length);
  expect(performance.now() - started).toBeLessThan(LONGEST_MS);
  return refusals.length > 0;
}
