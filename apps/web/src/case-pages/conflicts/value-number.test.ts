import { catalogueOf } from "@halfturn/words";
import { expect, test } from "vitest";
import { valueNumber } from "./value-number.js";

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
    "1180 mm",
    "105 km/h",
    "1.85°",
    "90°",
    "3600 rpm",
    "0.012 °/mm",
    "3.73",
  ]);
  expect(all.map(([value, key]) => valueNumber(value, key, us))).toEqual([
    "46,457 in",
    "65,244 mph",
    "1,85°",
    "90°",
    "3600 rpm",
    "0,305 °/in",
    "3,73",
  ]);
});

test("two values that differ look different, to a tenth of a millimetre and beyond", () => {
  expect([12.34, 12.36].map((value) => valueNumber(value, "lateralMm", metric))).toEqual(["12.34 mm", "12.36 mm"]);
  expect([1180, 1180.1].map((value) => valueNumber(value, "lengthMm", us))).toEqual(["46,457 in", "46,461 in"]);
});
