import { hearablePlaces, heardReaders, type MemoryTrack, memoryRecording, type SpoolRoom } from "@halfturn/recordings";
import { expect, test } from "vitest";
import { type Housed, housed } from "./housed.js";
import { PrivateFiles } from "./private-files.test-support.js";
import { privateSpools, SpoolFailure } from "./private-spools.js";
import { sweepSpools } from "./spool-folder.js";

const COUNT = 100_000;
/** Three pieces of a column, and a little. */
const HELD = 10_000;
const BYTES = COUNT * Float64Array.BYTES_PER_ELEMENT;
const track: MemoryTrack = {
  channels: [{ id: "accel_z", name: "accel_z", unit: null, quantity: "acceleration", fullScale: null }],
  clock: { kind: "even", start: 0, rate: 1000, count: COUNT },
  times: null,
  values: [Float64Array.from({ length: COUNT }, (_, k) => Math.sin(k * k))],
};
const recording = memoryRecording([track]);
const places = hearablePlaces(recording);
type Heard = Awaited<ReturnType<typeof heardReaders>>;
type Read = Extract<Heard, { readonly ok: true }>["value"];

const listened = (files: PrivateFiles | null, work?: () => void): Promise<Housed<Read>> =>
  housed(
    recording,
    places,
    async (room: SpoolRoom) => {
      const read = await heardReaders(recording, places, room);
      work?.();
      return read;
    },
    files && privateSpools(HELD, files),
  );

function samplesOf({ answer }: Housed<Read>): Float64Array {
  if (!answer.ok) throw new Error(answer.code);
  const out = new Float64Array(COUNT);
  answer.value.heard[0]?.recorded.samples.read(0, out);
  return out;
}

const leftIn = (files: PrivateFiles): readonly string[] => [...files.there].filter((path) => path !== "/listening");

test("samples lie in private files while they are needed, read as in memory, and nothing is left of them", async () => {
  const files = new PrivateFiles();
  const read = await listened(files);
  expect(read.inMemory).toBe(null);
  expect(leftIn(files).length).toBeGreaterThan(1);
  expect(samplesOf(read)).toEqual(samplesOf(await listened(null)));
  // Few at a time, over any border of what is fetched together, back and forth.
  const samples = read.answer.ok ? read.answer.value.heard[0]?.recorded.samples : undefined;
  for (const first of [0, 16_380, 16_384, 12, 40_000, 39_999, COUNT - 10]) {
    const few = new Float64Array(10);
    samples?.read(first, few);
    expect(few).toEqual(track.values[0]?.subarray(first, first + 10));
  }
  await read.close();
  expect(leftIn(files)).toEqual([]);
});

test("where there is no room they are held in memory, and nothing is left of what was begun", async () => {
  const files = new PrivateFiles(BYTES / 2);
  const read = await listened(files);
  expect(read.inMemory).toBe("no-room");
  expect(leftIn(files)).toEqual([]);
  expect(samplesOf(read)).toEqual(track.values[0]);
});

test("a browser that has no private files, or refuses them, says so, and memory holds the samples", async () => {
  expect(privateSpools(HELD, {})).toBe(null);
  const refusing = {
    storage: { getDirectory: () => Promise.reject(new DOMException("no", "SecurityError")) } as never,
    locks: new PrivateFiles().locks,
  };
  await expect((async () => privateSpools(0, refusing)?.open())()).rejects.toBeInstanceOf(SpoolFailure);
  const read = await housed(recording, places, (room) => heardReaders(recording, places, room), privateSpools(HELD, refusing));
  expect(read).toMatchObject({ inMemory: "no-files", answer: { ok: true } });
  expect(samplesOf(read)).toEqual(track.values[0]);
});

test("memory is bounded for a file that does not say how long it is, too", async () => {
  const unsaid = memoryRecording([{ ...track, clock: { kind: "stamped", count: null }, times: new Float64Array(COUNT) }]);
  const asks = async (room: SpoolRoom) => {
    expect(room.held).toBe(30_000_000);
    await room.open();
    return { ok: true, value: null } as const;
  };
  const [place] = hearablePlaces(unsaid);
  if (!place) throw new Error("nothing to hear");
  expect(await housed(unsaid, [place, place], asks, null)).toMatchObject({ answer: { ok: false, code: "recording.too-many" } });
});

test("work that is stopped leaves nothing", async () => {
  const files = new PrivateFiles();
  const stop = (): never => {
    expect(leftIn(files).length).toBeGreaterThan(1);
    throw new DOMException("stopped", "AbortError");
  };
  await expect(listened(files, stop)).rejects.toMatchObject({ name: "AbortError" });
  expect(leftIn(files)).toEqual([]);
});

test("what a killed tab left is swept at the next start, and what another tab works on stays", async () => {
  const files = new PrivateFiles();
  await listened(files);
  await sweepSpools(files);
  expect(leftIn(files).length).toBeGreaterThan(1);
  files.kill();
  const other = await listened(files);
  await sweepSpools(files);
  expect(leftIn(files).filter((path) => path.split("/").length === 3).length).toBe(1);
  expect(samplesOf(other)).toEqual(track.values[0]);
  await other.close();
  expect(leftIn(files)).toEqual([]);
  await sweepSpools({});
});

test("files that the browser lets go of later than of the lock are swept all the same", async () => {
  const files = new PrivateFiles();
  await listened(files);
  files.letGoOfLocks();
  const sweeping = sweepSpools(files);
  setTimeout(() => files.letGoOfFiles(), 50);
  await sweeping;
  expect(leftIn(files)).toEqual([]);
});
