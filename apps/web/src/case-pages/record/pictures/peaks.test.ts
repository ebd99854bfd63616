import { expect, test } from "vitest";
import { decimatedByMax, largestPeaks, turningAtFrequency } from "./peaks.js";

const SPACING = 0.25;
const spectrum = (tops: Readonly<Record<number, number>>): Float32Array => {
  const lines = new Float32Array(800).fill(0.01);
  for (const [hertz, amplitude] of Object.entries(tops)) lines[Number(hertz) / SPACING] = amplitude;
  return lines;
};

test("the largest peaks come first, a neighbour within the spread of one is not another, drift is none", () => {
  const found = largestPeaks(spectrum({ 0.5: 9, 32: 1, 33: 0.9, 60: 0.5, 64: 0.7 }), SPACING, 3);
  expect(found.map(({ frequency }) => frequency)).toEqual([32, 64, 60]);
});

test("names every order that passes through a frequency at the speeds of the stretch, nearest first", () => {
  const parts = [
    {
      part: "wheel",
      perWheelTurn: 1,
      orders: [{ order: 1, cause: "wheel-unbalance-or-runout" } as const, { order: 3, cause: "wheel-out-of-round-thrice" } as const],
    },
    { part: "propeller-shaft", perWheelTurn: 3.73, orders: [{ order: 1, cause: "shaft-unbalance-or-runout" } as const] },
  ];
  const rates = [8, 9, 10] as const;
  expect(turningAtFrequency(33, parts, rates, 0.2).map(({ part, order }) => `${part} ${order}`)).toEqual(["propeller-shaft 1"]);
  expect(turningAtFrequency(30, parts, rates, 0.2).map(({ part, order }) => `${part} ${order}`)).toEqual(["wheel 3", "propeller-shaft 1"]);
  expect(turningAtFrequency(50, parts, rates, 0.2)).toEqual([]);
});

test("a single high line is seen however few the columns", () => {
  const few = decimatedByMax(spectrum({ 32: 1 }), 7);
  expect([few.length, Math.max(...few)]).toEqual([7, 1]);
});
