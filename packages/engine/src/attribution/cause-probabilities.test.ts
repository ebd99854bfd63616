import { expect, test } from "vitest";
import { causeProbabilities, type OrderEvidence, presence } from "./cause-probabilities.js";

const order = (share: number, u: number, ratio: number): OrderEvidence => ({ share, u, noiseUnits: 40 * ratio, blocks: 20, freedom: 1000 });
const ROUNDING = 1e-9;

test("all add up to one", () => {
  for (const evidence of [
    [order(0.5, 0.01, 90), order(0.1, 0.01, 20), order(0, 0.001, 1)],
    [order(0.001, 0.001, 1.1), order(0, 0.001, 0.8)],
  ]) {
    const { orders, none } = causeProbabilities(evidence);
    expect(Math.abs(orders.reduce((a, b) => a + b, none) - 1)).toBeLessThan(ROUNDING);
  }
});

test("the clearly largest is nearly certain, two alike are even, and noise is most likely none", () => {
  expect(causeProbabilities([order(0.5, 0.01, 90), order(0.1, 0.01, 20)]).orders[0]).toBeGreaterThan(0.999);
  const even = causeProbabilities([order(0.3, 0.02, 60), order(0.3, 0.02, 60), order(0, 0.001, 1)]).orders;
  expect(Math.abs((even[0] ?? NaN) - 0.5)).toBeLessThan(1e-3);
  expect(causeProbabilities([order(0.001, 0.001, 1), order(0.001, 0.001, 1.2)]).none).toBeGreaterThan(0.5);
});

test("a larger one that hardly stands out of the noise is not preferred to a smaller one that surely does", () => {
  const { orders } = causeProbabilities([order(0.03, 0.02, 1.2), order(0.025, 0.002, 30)]);
  expect(orders[1]).toBeGreaterThan(orders[0] ?? NaN);
});

test("what stands out is more surely there the more blocks show it, and noise itself counts against", () => {
  const of = (ratio: number, blocks: number): number => presence({ noiseUnits: 2 * blocks * ratio, blocks, freedom: 1e6 });
  expect(of(2, 50)).toBeGreaterThan(of(2, 5));
  expect(of(1, 50)).toBeLessThan(0);
  // One block: x - 1 - ln x less half of ln 2, as of a variance ten times the noise's.
  expect(Math.abs(of(10, 1) - (9 - Math.log(10) - Math.log(2) / 2))).toBeLessThan(1e-3);
});
