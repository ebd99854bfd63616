import { expect, test } from "vitest";
import { withoutZeroCheck, withZeroPair, zeroFound, zeroReading } from "./zero-check.js";

/** A few units in the last place of sums of such degrees. */
const ROUNDING_DEG = 1e-12;

test("a spot that reads 3.4 to the right and 2.8 to the left after turning round has a zero of 0.3", () => {
  const found = zeroFound([zeroReading(3.4, "display-right"), zeroReading(2.8, "display-left")]);
  expect(Math.abs((found ?? Number.NaN) - 0.3)).toBeLessThan(ROUNDING_DEG);
});

test("a gauge without a zero reads the same size on the other side of its display", () => {
  expect(zeroFound([zeroReading(0.3, "display-right"), zeroReading(0.3, "display-left")])).toBe(0);
});

test("pairs are averaged, and half a pair says nothing", () => {
  const pair = [zeroReading(0.2, "display-right"), zeroReading(0, null)];
  expect(zeroFound(pair)).toBe(0.1);
  const both = zeroFound([...pair, zeroReading(0.4, "display-right"), zeroReading(0.1, "display-left")]);
  expect(Math.abs((both ?? Number.NaN) - 0.125)).toBeLessThan(ROUNDING_DEG);
  expect(zeroFound([zeroReading(0.2, "display-right")])).toBeNull();
});

test("pairs are added to a gauge and taken away again", () => {
  const gauge = { resolutionDeg: 0.1, accuracyDeg: 0.1 };
  const checked = withZeroPair(gauge, zeroReading(0.2, "display-right"), zeroReading(0, null));
  expect(checked.zeroCheck).toEqual([{ deg: 0.2, lower: "display-right" }, { deg: 0 }]);
  expect(withoutZeroCheck(checked)).toEqual(gauge);
});
