import { expect, test } from "vitest";
import { longColumn } from "../timing/long-column.js";
import { MEMORY } from "../timing/sample-spool.js";
import { pulseTimes } from "./pulse-times.js";

async function columnOf(count: number, value: (k: number) => number) {
  const column = longColumn(MEMORY);
  await column.push(Float64Array.from({ length: count }, (_, k) => value(k)));
  return column;
}

/** Longer than what is looked at at a time, so that an edge lies between two stretches. */
const COUNT = 600_000;

test("finds every edge of a long column, those between two stretches too", async () => {
  const times = await columnOf(COUNT, (k) => k / 1000);
  // A triangle of 8 samples from 0 to 4: it rises through 2 at every place 8 n + 2, and 262,144 is such a multiple of 8.
  const values = await columnOf(COUNT, (k) => 4 - Math.abs(((k + 6) % 8) - 4));
  const pulses = await pulseTimes({ times, values }, {});
  expect(pulses.length).toBe(COUNT / 8);
  const first = pulses[0] as number;
  expect(pulses.every((time, n) => Math.abs(time - first - (8 * n) / 1000) < 1e-9)).toBe(true);
});

test("steadies the edges of a square column, and leaves those of a raw signal where they are", async () => {
  // Marks about every 10.4 samples: their edges are seen in whole steps.
  const times = await columnOf(2000, (k) => k);
  const square = await columnOf(2000, (k) => ((k / 10.4) % 1 < 0.5 ? 1 : 0));
  const raw = await columnOf(2000, (k) => ((k / 10.4) % 1 < 0.5 ? 1 : 0) + (k === 3 ? 0.01 : 0));
  const scatter = (pulses: Float64Array): number => {
    const own = pulses.subarray(10, -10);
    return Math.max(...own.map((time, n) => Math.abs(time - (own[0] as number) - 10.4 * n)));
  };
  expect(scatter(await pulseTimes({ times, values: raw }, {}))).toBeGreaterThan(0.3);
  expect(scatter(await pulseTimes({ times, values: square }, {}))).toBeLessThan(0.3);
});
