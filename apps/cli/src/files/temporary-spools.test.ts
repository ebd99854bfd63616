import { existsSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { hearablePlaces, heardReaders, type MemoryTrack, memoryRecording, recordedSpeed, speedPlaces } from "@halfturn/recordings";
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { SpoolFailure, temporarySpools } from "./temporary-spools.js";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "spools-"));
  vi.stubEnv("TMPDIR", folder).stubEnv("TEMP", folder);
});
afterEach(() => {
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true, force: true });
});

const COUNT = 20_000;
const RATE = 1000;
const values = Float64Array.from({ length: COUNT }, (_, n) => Math.sin(n * n) / 3);
const channels = ["x", "z"].map((id) => ({ id, name: id, unit: null, quantity: "acceleration", fullScale: null }) as const);
const even = (samples: Float64Array): MemoryTrack => ({
  channels,
  clock: { kind: "even", start: 2, rate: RATE, count: COUNT },
  times: null,
  values: [samples, samples],
});
const stamped: MemoryTrack = {
  channels,
  clock: { kind: "stamped", count: COUNT },
  times: Float64Array.from(values, (_, n) => n / RATE),
  values: [values, values],
};

it.each([
  ["an even clock", even(values)],
  ["a value missing", even(values.with(500, Number.NaN))],
  ["stamps", stamped],
])("gives back the same samples as memory does, and leaves nothing behind: %s", async (_, track) => {
  const recording = memoryRecording([track]);
  const read = async (held: number): Promise<unknown> => {
    const room = temporarySpools(held);
    const open = vi.spyOn(room, "open");
    const found = await heardReaders(recording, hearablePlaces(recording), room);
    if (!found.ok) throw new Error(found.code);
    expect(open.mock.calls.length > 0).toBe(held < COUNT - 1);
    const all = found.value.heard.map(({ recorded: { samples } }) => {
      const out = new Float64Array(samples.length - 7);
      samples.read(7, out);
      return [samples.start, samples.rate, out];
    });
    room.close();
    expect(readdirSync(folder)).toEqual([]);
    return { all, findings: found.value.findings };
  };
  expect(await read(COUNT / 2)).toEqual(await read(COUNT));
});

it("gives the same speed, whether a tachometer's column or a log", async () => {
  const speed: MemoryTrack = {
    channels: [
      { id: "tacho_wheel", name: "tacho_wheel", unit: null, quantity: "pulses", fullScale: null },
      { id: "speed", name: "speed", unit: null, quantity: "velocity", fullScale: null },
    ],
    clock: { kind: "stamped", count: COUNT },
    // One stamp in a thousand was written twice.
    times: Float64Array.from(values, (_, n) => (n - (n % 1000 === 999 ? 1 : 0)) / RATE),
    values: [values.map((_, n) => (n % 37 < 10 ? 1 : 0)), values],
  };
  const recording = memoryRecording([speed]);
  for (const place of speedPlaces(recording)) {
    const tachometer = place.channel.quantity === "pulses" ? { part: "wheel", perTurn: 2 } : null;
    const room = temporarySpools(COUNT / 2);
    const spooled = await recordedSpeed(recording, place, tachometer, {}, room);
    room.close();
    expect(spooled).toEqual(await recordedSpeed(recording, place, tachometer));
    expect(spooled.ok).toBe(true);
  }
  expect(readdirSync(folder)).toEqual([]);
});

it("says so when there is no room for a temporary file", () => {
  rmSync(folder, { recursive: true });
  expect(existsSync(folder)).toBe(false);
  expect(() => temporarySpools(0).open()).toThrow(SpoolFailure);
});
