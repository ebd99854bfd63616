import { findChannel, heardReaders, MEMORY, memorySource, openRecording, slowChannel, writeCsv } from "@halfturn/recordings";
import { expect, test } from "vitest";
import { liveRate, motionRecording } from "./motion-recording.js";

const RATE = 60;
/** Ten seconds with stamps that wander by a tenth of a step, one of them handed over twice. */
const steps = Array.from({ length: 600 }, (_, k) => (k + 0.1 * Math.sin(k * 1.7)) / RATE);
const times = steps.toSpliced(300, 0, steps[299] as number);
const wave = (hertz: number): Float64Array => Float64Array.from(times, (time) => Math.sin(2 * Math.PI * hertz * time));
const take = {
  times: Float64Array.from(times),
  x: wave(5),
  y: wave(7),
  z: wave(9),
  speedTimes: Float64Array.of(0.2, 1.2, 2.2),
  speeds: Float64Array.of(20, 21, 22),
};

async function asCsv(recording: ReturnType<typeof motionRecording>): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  for await (const part of writeCsv(recording, { separator: ",", decimal: "." })) {
    if (!part.ok) throw new Error(part.code);
    parts.push(part.value);
  }
  return new Uint8Array(await new Blob(parts as BlobPart[]).arrayBuffer());
}

test("a take becomes a file that tells its true rate, its axes and the speed", async () => {
  const opened = await openRecording(memorySource(await asCsv(motionRecording(take))));
  if (!opened.ok) throw new Error(opened.code);
  const place = findChannel(opened.value, "accel_z");
  const speed = findChannel(opened.value, "speed");
  if (!place.ok || !speed.ok) throw new Error("a channel is missing");
  expect(place.value.channel.quantity).toBe("acceleration");
  const read = await heardReaders(opened.value, [place.value], MEMORY);
  if (!read.ok) throw new Error(read.code);
  // 0.1 % of the rate moves no order by more than a line.
  expect(Math.abs((read.value.heard[0]?.even.rate ?? 0) / RATE - 1)).toBeLessThan(0.001);
  const speeds = await slowChannel(opened.value, speed.value.track, speed.value.index);
  expect(speeds.ok && [...speeds.value.values]).toEqual([20, 21, 22]);
});

test("without a receiver there is no speed", () => {
  expect(motionRecording({ ...take, speedTimes: new Float64Array(0), speeds: new Float64Array(0) }).tracks).toHaveLength(1);
});

test("the rate is told once there is something to tell", () => {
  expect(liveRate(times.slice(0, 5))).toBe(null);
  expect(Math.abs((liveRate(steps) ?? 0) - RATE)).toBeLessThan(0.2);
});
