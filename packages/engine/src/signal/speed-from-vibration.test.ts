import { expect, test } from "vitest";
import { normalDeviates, uniformDeviates } from "../uncertainty/index.js";
import { readerOf } from "./sample-reader.js";
import { must } from "./shaft-angle.test-support.js";
import { speedFromVibration } from "./speed-from-vibration.js";

const RATE = 200;
const [SLOWEST, FASTEST] = [2 * Math.PI * 15, 2 * Math.PI * 45];
/** A drive of 40 s from 21 to 36 turns a second, not evenly. */
const angleAt = (t: number): number => 2 * Math.PI * (20 * t + 0.2 * t * t + 3 * Math.sin(t / 3));
const speedAt = (t: number): number => 2 * Math.PI * (20 + 0.4 * t + Math.cos(t / 3));
/** A line of one over the block of a second is 1 Hz of some 30; a third of it. */
const WORST = 0.01;
const TYPICAL = 0.002;

const drive = (amplitude: number, order: number, seed: number, seconds = 40) => {
  const normal = normalDeviates(uniformDeviates(seed));
  const samples = Float64Array.from({ length: RATE * seconds }, (_, n) => amplitude * Math.cos(order * angleAt(n / RATE)) + normal());
  return readerOf({ samples, rate: RATE, start: 0 });
};

test("finds the speed of a shaft from its order, in noise of its own power and of twice that", () => {
  for (const [amplitude, order] of [
    [2, 1],
    [1.4, 2],
    [1, 1],
  ] as const) {
    const { times, speeds, angle } = must(
      speedFromVibration(drive(amplitude, order, 5), { orders: [order], slowest: SLOWEST, fastest: FASTEST }),
    );
    const errors = speeds.map((speed, i) => Math.abs(speed / speedAt(times[i] as number) - 1)).sort();
    expect(errors.at(-1)).toBeLessThan(WORST);
    expect(errors[errors.length >> 1]).toBeLessThan(TYPICAL);
    expect([angle.start, angle.end]).toEqual([0, 40 - 1 / RATE]);
    expect(Math.abs(angle.total / angleAt(angle.end) - 1)).toBeLessThan(TYPICAL);
  }
});

test("several orders together show what one alone does not", () => {
  const normal = normalDeviates(uniformDeviates(9));
  const samples = Float64Array.from({ length: RATE * 40 }, (_, n) => {
    const angle = angleAt(n / RATE);
    return 0.5 * (Math.cos(angle) + Math.cos(2 * angle)) + normal();
  });
  const { speeds, times } = must(
    speedFromVibration(readerOf({ samples, rate: RATE, start: 0 }), { orders: [1, 2], slowest: SLOWEST, fastest: FASTEST }),
  );
  const errors = speeds.map((speed, i) => Math.abs(speed / speedAt(times[i] as number) - 1)).sort();
  expect(errors[errors.length >> 1]).toBeLessThan(TYPICAL);
});

test("no speed is found in noise alone, nor in a recording of a moment", () => {
  for (let seed = 0; seed < 30; seed++) {
    const found = speedFromVibration(drive(0, 1, seed, 20), { orders: seed % 2 === 0 ? [1] : [1, 2], slowest: SLOWEST, fastest: FASTEST });
    expect(found).toMatchObject({ ok: false, code: "shaft-angle.no-ridge" });
  }
  expect(speedFromVibration(drive(1, 1, 1, 2), { orders: [1], slowest: SLOWEST, fastest: FASTEST })).toMatchObject({
    code: "signal.too-short",
  });
});
