import { type Channel, channelPlaces, memoryRecording } from "@halfturn/recordings";
import { expect, test } from "vitest";
import { fitsHere } from "./fits-here.js";

const channel = (id: string): Channel => ({ id, name: id, unit: null, quantity: "share", fullScale: 1 });
/** Two channels of a sound that say how long they are; there is nothing in them. */
const sound = (minutes: number) =>
  memoryRecording([
    {
      channels: [channel("left"), channel("right")],
      clock: { kind: "even", start: 0, rate: 48_000, count: 48_000 * 60 * minutes },
      times: null,
      values: [new Float64Array(0), new Float64Array(0)],
    },
  ]);

test("ten minutes of two sounds fit, an hour is refused before a sample is read, one channel of fifteen minutes fits", () => {
  expect(fitsHere(sound(10), channelPlaces(sound(10))).ok).toBe(true);
  expect(fitsHere(sound(60), channelPlaces(sound(60)))).toMatchObject({ ok: false, code: "recording.too-many", params: { of: "samples" } });
  expect(fitsHere(sound(15), channelPlaces(sound(15))).ok).toBe(false);
  expect(fitsHere(sound(15), channelPlaces(sound(15)).slice(0, 1)).ok).toBe(true);
});
