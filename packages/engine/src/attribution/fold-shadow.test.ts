import { expect, test } from "vitest";
import { shaftAngleFromSpeeds } from "../signal/index.js";
import { must } from "../signal/shaft-angle.test-support.js";
import type { RunFit } from "./fit-run.js";
import { foldShadows } from "./fold-shadow.js";

const RATE = 100;
/** Ten blocks of three seconds, the wheel from 10 to 12 turns a second. */
const places = Array.from({ length: 10 }, (_, i) => ({ time: 3 * i + 1.5, turnsPerSecond: 10 + (3 * i + 1.5) / 15 }));
const reference = (looseness: number) => ({
  angle: must(shaftAngleFromSpeeds(Float64Array.of(0, 30), Float64Array.of(20 * Math.PI, 24 * Math.PI))),
  perWheelTurn: 1,
  looseness,
});
const column = (perTurn: number) => ({ perTurn, lines: [] });
const fitOf = (perTurn: number): RunFit => ({
  columns: [],
  folded: [{ column: column(perTurn), blocks: [], frequencies: [], places: [], hiddenBehind: new Map() }],
  places,
  squares: [],
  residualSquares: [],
  residual: { spacing: 1, slower: new Float64Array(0), faster: new Float64Array(0), speedRatio: 1 },
});
const known = { rate: RATE, scale: 1, seconds: 3 };

test("six and a half orders of the wheel, 65 to 78 Hz, fold down through its third order in the middle of the drive", () => {
  // 100 - 6.5 n = 3 n at 10.53 turns a second, which is passed after eight seconds.
  const [shadow, ...others] = foldShadows(fitOf(6.5), column(3), reference(0), known);
  expect(others).toEqual([]);
  expect([...(shadow?.blocks ?? [])]).toEqual([2]);
});

test("a speed known to 1.5 % lets it lie there for longer: by as much as 78 Hz may be off", () => {
  const [shadow] = foldShadows(fitOf(6.5), column(3), reference(0.015), known);
  // Block 3, 10.7 turns a second: 101.65 Hz together, 1.65 over; 69.6 Hz at 1.5 % and two lines of a third of a hertz reach 1.71. Block 1 is 2.15 short.
  expect([...(shadow?.blocks ?? [])]).toEqual([2, 3]);
});

test("what cannot reach a column is not named", () => {
  expect(foldShadows(fitOf(6.5), column(1), reference(0.015), known)).toEqual([]);
});

test("at a steady speed it lies there all along or not at all", () => {
  const steady = { ...fitOf(9.1), places: places.map(({ time }) => ({ time, turnsPerSecond: 10 })) };
  const angle = must(shaftAngleFromSpeeds(Float64Array.of(0, 30), Float64Array.of(20 * Math.PI, 20 * Math.PI)));
  const near = (looseness: number) => foldShadows(steady, column(1), { angle, perWheelTurn: 1, looseness }, known);
  // 91 Hz fold to 9, a hertz below the wheel: two lines apart are 0.67 Hz, and 1.5 % of 91 Hz is 1.37.
  expect(near(0)).toEqual([]);
  expect(near(0.015)[0]?.blocks.size).toBe(10);
});
