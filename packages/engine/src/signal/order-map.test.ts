import { expect, test } from "vitest";
import { orderMap } from "./order-map.js";
import { readerOf } from "./sample-reader.js";
import { shaftAngleFromSpeeds } from "./shaft-angle.js";
import { must, sweptAngle } from "./shaft-angle.test-support.js";

/** 10 to 30 turns a second in 20 s, orders 1 and 3 with amplitudes 2 and 0.5. */
const angleAt = sweptAngle(10, 1);
const sampledAt = (rate: number) => ({
  samples: Float64Array.from({ length: 20 * rate + 1 }, (_, n) => {
    const angle = angleAt(n / rate);
    return 2 * Math.cos(angle + 0.2) + 0.5 * Math.cos(3 * angle);
  }),
  rate,
  start: 0,
});
const signal = sampledAt(2048);
const angle = must(shaftAngleFromSpeeds(Float64Array.of(0, 20), Float64Array.of(20 * Math.PI, 60 * Math.PI)));
/** What the spline and the filter promise. */
const EVEN = 2e-3;

test("each row holds the mean square of every order, wherever the speed is", () => {
  const map = must(orderMap(readerOf(signal), angle, { turns: 16, highestOrder: 6 }));
  expect(map.orderSpacing).toBe(1 / 16);
  for (let row = 0; row < map.times.length; row++) {
    const at = (order: number): number => map.meanSquare[row * map.lines + Math.round(order / map.orderSpacing)] as number;
    expect(Math.abs(at(1) / 2 - 1)).toBeLessThan(EVEN);
    expect(Math.abs(at(3) / 0.125 - 1)).toBeLessThan(EVEN);
    expect(at(2)).toBeLessThan(1e-6);
    expect(Math.abs((map.speeds[row] as number) / angle.speedAt(map.times[row] as number) - 1)).toBeLessThan(0.02);
  }
  expect(map.speeds.every((speed, row) => row === 0 || speed > (map.speeds[row - 1] as number))).toBe(true);
});

test("orders that pass half the sample rate do not hinder those below it", () => {
  const map = must(orderMap(readerOf(sampledAt(256)), angle, { turns: 16, highestOrder: 6 }));
  expect(map.lines).toBe(6 * 16 + 1);
  for (let row = 0; row < map.times.length; row++)
    expect(Math.abs((map.meanSquare[row * map.lines + 16] as number) / 2 - 1)).toBeLessThan(EVEN);
});

test("too many rows are averaged, lines may be drawn closer, and a recording without one block is refused", () => {
  const few = must(orderMap(readerOf(signal), angle, { turns: 16, highestOrder: 6, rows: 5, fineness: 2 }));
  expect(few.times.length).toBeLessThanOrEqual(5);
  expect(few.orderSpacing).toBe(1 / 32);
  expect(Math.abs((few.meanSquare[2 * few.lines + 32] as number) / 2 - 1)).toBeLessThan(EVEN);
  expect(orderMap(readerOf(signal), angle, { turns: 1000, highestOrder: 6 })).toMatchObject({
    ok: false,
    code: "order-tracking.no-whole-turns",
  });
});
