import { expect, test } from "vitest";
import { movingStretch } from "./moving-stretch.js";

const stretch = (speeds: readonly number[], least = 2, start = 10) => {
  const found = movingStretch(
    Float64Array.from(speeds, (_, i) => start + i),
    Float64Array.from(speeds),
    least,
  );
  return [Array.from(found.times), Array.from(found.speeds)];
};

test("the longest stretch in motion, without the standstill at either end", () => {
  expect(stretch([0, 1, 5, 6, 0, 3, 4, 5, 0])).toEqual([
    [15, 16, 17],
    [3, 4, 5],
  ]);
  expect(stretch([5, 6, 7])).toEqual([
    [10, 11, 12],
    [5, 6, 7],
  ]);
  expect(stretch([0, 5, 5, Number.NaN, 6])).toEqual([
    [11, 12],
    [5, 5],
  ]);
  expect(stretch([0, 1, 0])).toEqual([[], []]);
  expect(stretch([])).toEqual([[], []]);
  expect(stretch([0, 5, 5, 0], 2, -60)).toEqual([
    [-59, -58],
    [5, 5],
  ]);
});
