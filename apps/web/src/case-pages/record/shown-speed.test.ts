import { catalogueOf } from "@halfturn/words";
import { expect, test } from "vitest";
import { speedWriter, usualSpeeds, wholeSpeedWriter } from "./shown-speed.js";

const { numbers } = catalogueOf("en");

test("a speed is written in the units that are set, whole where it was meant whole", () => {
  expect([85, 84.5].map(speedWriter(numbers, "metric"))).toEqual(["85 km/h", "84.5 km/h"]);
  expect([85, 65 * 1.609344].map(speedWriter(numbers, "us"))).toEqual(["52.8 mph", "65 mph"]);
});

test("a measured speed is whole", () => {
  expect([wholeSpeedWriter(numbers, "metric")(74.4), wholeSpeedWriter(numbers, "us")(74.4)]).toEqual(["74 km/h", "46 mph"]);
});

test("the speeds to tap are whole in their own units", () => {
  for (const units of ["metric", "us"] as const)
    for (const speed of usualSpeeds(units)) expect(speedWriter(numbers, units)(speed)).toMatch(/^\d+ (km\/h|mph)$/);
});
