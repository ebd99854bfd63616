import { describe, expect, it } from "vitest";
import { memorySource } from "../bytes/byte-source.js";
import { writeCsv } from "../csv/write-csv.js";
import { memoryRecording } from "../memory-recording.js";
import { openRecording } from "../open-recording.js";
import type { Recording } from "../recording.js";
import { bytesOf, opened, readAll } from "../recording-contract.test-support.js";
import { hearablePlaces } from "../road-test/hearable-places.js";
import { speedPlaces } from "../road-test/recorded-speed.js";
import { writeUff } from "../uff/write-uff.js";
import { writeWav } from "../wav/write-wav.js";
import { columnName } from "./column-name.js";
import { writtenUnit } from "./written-unit.js";

const HEADINGS = ["floor_mms", "seat_um", "vel_z_mps", "speed_kmh", "height_m", "accel_z_ms2"];
const VALUES = [0.0125, -0.003, 0.75];
/** Two products of doubles, of values up to 1; a universal file in text holds 13 digits. */
const DIGITS = 1e-12;

const made = memoryRecording([
  {
    channels: HEADINGS.map((heading) => ({ ...columnName(heading), fullScale: null })),
    clock: { kind: "even", start: 0, rate: 100, count: VALUES.length },
    times: null,
    values: HEADINGS.map(() => Float64Array.from(VALUES)),
  },
]);

it.each([
  ["a table", () => writeCsv(made, { separator: ",", decimal: "." })],
  ["a universal file", () => writeUff(made, { kind: "text" })],
] as const)("in %s the vibration of a floor does not become a road speed", async (_, write) => {
  const opened = await openRecording(memorySource(await bytesOf(write())));
  if (!opened.ok) throw new Error(opened.code);
  const names = (places: ReturnType<typeof speedPlaces>) => places.map(({ channel }) => channel.name);
  expect(names(speedPlaces(opened.value))).toEqual(["speed"]);
  expect(names(speedPlaces(made))).toEqual(["speed"]);
  expect(names(hearablePlaces(opened.value))).toEqual(names(hearablePlaces(made)));
  for (const track of opened.value.tracks.keys())
    for (const values of (await readAll(opened.value, track)).values)
      for (const [k, value] of values.entries()) expect(Math.abs(value - (VALUES[k] as number))).toBeLessThan(DIGITS);
});

it("everything but a vibration's velocity and displacement is written in SI", () => {
  expect(HEADINGS.map((heading) => writtenUnit(columnName(heading)).unit)).toEqual(["mm/s", "mm", "mm/s", "m/s", "m", "m/s^2"]);
});

describe("a share of a full scale that nobody told", () => {
  const SHARES = [0.5, -0.25, 0.125, 0, -1];
  const sound = memoryRecording([
    {
      channels: [{ ...columnName("channel_1_fs"), fullScale: 1 }],
      clock: { kind: "even", start: 0, rate: 100, count: SHARES.length },
      times: null,
      values: [Float64Array.from(SHARES)],
    },
  ]);

  it.each([
    ["a sound file", (recording) => writeWav(recording, { encoding: "pcm16", fullScale: 1 })],
    ["a table", (recording) => writeCsv(recording, { separator: ",", decimal: "." })],
    ["a table with decimal commas", (recording) => writeCsv(recording, { separator: ";", decimal: "," })],
    ["a universal file in text", (recording) => writeUff(recording, { kind: "text" })],
    ["a universal file in bytes", (recording) => writeUff(recording, { kind: "binary", littleEndian: true })],
  ] as readonly [string, (recording: Recording) => ReturnType<typeof writeUff>][])(
    "stays one through %s and is still heard",
    async (_, write) => {
      const heard = await opened(await bytesOf(writeWav(sound, { encoding: "pcm16", fullScale: 1 })));
      const through = await opened(await bytesOf(write(heard)));
      expect(hearablePlaces(through).map(({ channel }) => [channel.name, channel.quantity])).toEqual([["channel_1", "share"]]);
      expect(through.notes.map(({ code }) => code)).toEqual(["recording.no-full-scale"]);
      // Halves and quarters, and the least step of sixteen bits above -1, are exact in every one of them.
      expect((await readAll(through)).values).toEqual((await readAll(heard)).values);
    },
  );

  it("takes its unit and its full scale from the case, as in the sound file", async () => {
    const table = await bytesOf(writeCsv(sound, { separator: ",", decimal: "." }));
    const scaled = await opened(table, [{ id: "channel_1_fs", unit: "m/s^2", fullScale: 16 }]);
    expect(scaled.notes).toEqual([]);
    expect((await readAll(scaled)).values).toEqual([SHARES.map((share) => 16 * share)]);
  });
});
