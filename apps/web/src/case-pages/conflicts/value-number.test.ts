import { catalogueOf } from "@halfturn/words";
import { expect, test } from "vitest";
import { numbersByKey, valueNumber } from "./value-number.js";

const { numbers: metric } = catalogueOf("en");
const { numbers: us } = catalogueOf("es", "us");

test("two numbers to choose between are said with their unit, in the units that are set", () => {
  const all = [
    [1180, "lengthMm"],
    [105, "speedKmh"],
    [1.85, "deg"],
    [90, "phasingDeg"],
    [3600, "maxShaftSpeedRpm"],
    [0.012, "pinionPitchDegPerMm"],
    [3.73, "axleRatio"],
  ] as const;
  expect(all.map(([value, key]) => valueNumber(value, key, metric))).toEqual([
    "1180\u00a0mm",
    "105\u00a0km/h",
    "1.85°",
    "90°",
    "3600\u00a0rpm",
    "0.012\u00a0°/mm",
    "3.73",
  ]);
  expect(all.map(([value, key]) => valueNumber(value, key, us))).toEqual([
    "46,46\u00a0in",
    "65,2\u00a0mph",
    "1,85°",
    "90°",
    "3600\u00a0rpm",
    "0,305\u00a0°/in",
    "3,73",
  ]);
});

test("two values that differ look different, to a tenth of a millimetre and beyond", () => {
  expect([12.34, 12.36].map((value) => valueNumber(value, "lateralMm", metric))).toEqual(["12.3\u00a0mm", "12.4\u00a0mm"]);
  const both = (key: string, in_: typeof us, ...values: readonly number[]) => values.map((value) => valueNumber(value, key, in_, values));
  expect(both("lengthMm", us, 1180, 1190)).toEqual(["46,46\u00a0in", "46,85\u00a0in"]);
  expect(both("lengthMm", us, 1180, 1180.1)).toEqual(["46,457\u00a0in", "46,461\u00a0in"]);
  expect(both("lengthMm", us, 1180, 1180.01)).toEqual(["46,4567\u00a0in", "46,4571\u00a0in"]);
  expect(both("lengthMm", metric, 12.31, 12.33, 40)).toEqual(["12.31\u00a0mm", "12.33\u00a0mm", "40\u00a0mm"]);
  expect(both("speedKmh", us, 105, 105.001)).toEqual(["65,244\u00a0mph", "65,245\u00a0mph"]);
  expect(both("deg", metric, 1.0001, 1.0002)).toEqual(["1.0001°", "1.0002°"]);
  expect(both("lengthMm", us, 1180, 1180)).toEqual(["46,46\u00a0in", "46,46\u00a0in"]);
});

test("numbers are told apart from those under the same key, wherever they stand", () => {
  const found = numbersByKey(
    [{ tube: { wallMm: 2, outerDiameterMm: 70 } }, undefined, { tube: { wallMm: 2.01 }, speeds: [1, 2] }],
    "section",
  );
  expect([...found]).toEqual([
    ["wallMm", [2, 2.01]],
    ["outerDiameterMm", [70]],
    ["speeds", [1, 2]],
  ]);
  expect(numbersByKey([3, 4], "lengthMm").get("lengthMm")).toEqual([3, 4]);
});
