import { expect, test } from "vitest";
import { longColumn } from "../timing/long-column.js";
import { MEMORY } from "../timing/sample-spool.js";
import { loggedSpeed } from "./logged-speed.js";

async function logOf(count: number) {
  const [times, values] = [longColumn(MEMORY), longColumn(MEMORY)];
  await times.push(Float64Array.from({ length: count }, (_, k) => k / 4096));
  await values.push(Float64Array.from({ length: count }, (_, k) => 20 + k / 4096));
  return { times, values };
}

test("a usual log stays as it is", async () => {
  const { times, speeds } = await loggedSpeed(await logOf(4096), {});
  expect(times).toEqual(Float64Array.from({ length: 4096 }, (_, k) => k / 4096));
  expect(speeds).toEqual(times.map((time) => 20 + time));
});

test("a speed in every row of an hour is averaged over a few milliseconds, and an even acceleration stays what it was", async () => {
  const count = 1_400_002;
  const { times, speeds } = await loggedSpeed(await logOf(count), {});
  expect(times.length).toBe(Math.ceil(count / 3));
  expect(times[0]).toBe(1 / 4096);
  expect(times.at(-1)).toBe((count - 1) / 4096);
  // Sums of three doubles.
  expect(speeds.every((speed, k) => Math.abs(speed - 20 - (times[k] as number)) < 1e-12)).toBe(true);
});
