import { expect, test } from "vitest";
import { channelPlaces } from "../find-channel.js";
import { memoryRecording } from "../memory-recording.js";
import type { Channel } from "../recording.js";
import { MEMORY } from "../timing/sample-spool.js";
import { hearablePlaces } from "./hearable-places.js";
import { heardReaders } from "./heard-readers.js";
import { recordedSpeed, speedPlaces } from "./recorded-speed.js";

const RATE = 100;
const COUNT = 1000;

const channel = (id: string, quantity: Channel["quantity"]): Channel => ({ id, name: id, unit: null, quantity, fullScale: null });
const wave = (hertz: number, count = COUNT): Float64Array =>
  Float64Array.from({ length: count }, (_, k) => Math.sin((2 * Math.PI * hertz * k) / RATE));
const even = (count = COUNT) => ({ kind: "even", start: 0, rate: RATE, count }) as const;

const recording = memoryRecording([
  {
    channels: [
      channel("accel_x", "acceleration"),
      channel("accel_z", "acceleration"),
      channel("hall", "voltage"),
      channel("noise", "pressure"),
    ],
    clock: even(),
    times: null,
    values: [wave(10), wave(12), wave(5).map((x) => (x > 0 ? 4.8 : 0.2)), wave(3)],
  },
  { channels: [channel("accel_far", "acceleration")], clock: even(COUNT / 2), times: null, values: [wave(10, COUNT / 2)] },
  {
    channels: [channel("speed", "velocity"), channel("engine", "rotation")],
    clock: { kind: "stamped", count: 3 },
    times: Float64Array.of(0, 4, 9),
    values: [Float64Array.of(20, 22, 21), Float64Array.of(200, 220, 210)],
  },
]);
const place = (id: string) => {
  const found = channelPlaces(recording).find((one) => one.channel.id === id);
  if (!found) throw new Error(id);
  return found;
};

test("accelerations go before a sound, and one on another clock is left out aloud", async () => {
  const wanted = hearablePlaces(recording);
  expect(wanted.map((one) => one.channel.id)).toEqual(["accel_x", "accel_z", "accel_far"]);
  const shares: number[] = [];
  const read = await heardReaders(recording, wanted, MEMORY, { onProgress: (share) => shares.push(share) });
  if (!read.ok) throw new Error(read.code);
  expect(read.value.heard.map((one) => one.place.channel.id)).toEqual(["accel_x", "accel_z"]);
  expect(read.value.findings.map(({ code, path }) => [code, path])).toEqual([["recording.channel-left-out", "accel_far"]]);
  expect(shares.at(-1)).toBe(1);
  expect(shares).toEqual(shares.toSorted((a, b) => a - b));
  expect(read.value.heard.map(({ recorded }) => recorded).map(({ quantity, samples }) => [quantity, samples.rate, samples.length])).toEqual(
    [
      ["acceleration", RATE, COUNT],
      ["acceleration", RATE, COUNT],
    ],
  );
});

test("what is no vibration is refused by name", async () => {
  const read = await heardReaders(recording, [place("hall")], MEMORY);
  expect(read).toMatchObject({ ok: false, code: "recording.unit-of-another-kind", params: { channel: "hall" } });
});

test("a road speed goes before an engine speed", () => {
  expect(speedPlaces(recording).map((one) => one.channel.id)).toEqual(["speed", "engine"]);
});

test("a speed is read on its own clock, and any channel can be named a tachometer", async () => {
  const speed = await recordedSpeed(recording, place("speed"), null);
  expect(speed).toMatchObject({ ok: true, value: { speed: { kind: "road-speed", times: Float64Array.of(0, 4, 9) } } });
  const pulses = await recordedSpeed(recording, place("hall"), { part: "wheel", perTurn: 2 });
  if (!pulses.ok || pulses.value.speed.kind !== "pulses") throw new Error("no pulses");
  // 5 marks a second for ten seconds, the first of which has begun before the recording.
  expect(pulses.value.speed).toMatchObject({ part: "wheel", perTurn: 2 });
  expect(Math.abs(pulses.value.speed.times.length - 50)).toBeLessThanOrEqual(1);
});
