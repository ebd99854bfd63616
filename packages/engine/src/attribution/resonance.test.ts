import { expect, test } from "vitest";
import { passedResonance, ringing } from "./resonance.js";

const CELLS = 400;
const bump = (at: number, height: number, width = 4) =>
  Float64Array.from({ length: CELLS }, (_, k) => 1 + height / (1 + ((k - at) / width) ** 2));

test("a peak that stays is a resonance, one that moves with the speed is not", () => {
  const [found, ...others] = ringing({ spacing: 0.5, slower: bump(100, 20), faster: bump(100, 30), speedRatio: 1.2 });
  expect(others).toEqual([]);
  expect(Math.abs((found?.frequency ?? NaN) - 50)).toBeLessThan(1);
  expect(found?.excitedBy).toBe("road");
  expect(ringing({ spacing: 0.5, slower: bump(100, 20), faster: bump(120, 20), speedRatio: 1.2 })).toEqual([]);
});

test("at a steady speed nothing is said, nor of a flat or falling noise", () => {
  expect(ringing({ spacing: 0.5, slower: bump(100, 20), faster: bump(100, 20), speedRatio: 1.01 })).toEqual([]);
  const falling = Float64Array.from({ length: CELLS }, (_, k) => 1 / (1 + (k / 10) ** 2));
  for (const noise of [new Float64Array(CELLS).fill(1), falling])
    expect(ringing({ spacing: 0.5, slower: noise, faster: noise, speedRatio: 1.2 })).toEqual([]);
});

test("an order that is largest inside its range passed a resonance; one that only grows did not", () => {
  const frequencies = Array.from({ length: 60 }, (_, i) => 20 + i / 2);
  const through = frequencies.map((f) => 1 / Math.hypot(1 - (f / 36) ** 2, 0.1 * (f / 36)));
  expect(Math.abs((passedResonance({ frequencies, amplitudes: through }) ?? NaN) - 36)).toBeLessThan(2);
  expect(passedResonance({ frequencies, amplitudes: frequencies.map((f) => f ** 2) })).toBeNull();
  expect(passedResonance({ frequencies: frequencies.map(() => 30), amplitudes: through })).toBeNull();
});
