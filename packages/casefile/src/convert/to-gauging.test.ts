import { degreesToRadians } from "@halfturn/engine/units";
import { expect, test } from "vitest";
import { exampleCase } from "../example-cases.test-support.js";
import type { Case } from "../schema/case.js";
import { HEADING_ACCURACY_DEG, TAPE_ACCURACY_MM, toGauging } from "./to-gauging.js";

test("one gauging with its gauge, state and places in the file", () => {
  const gauging = toGauging(exampleCase("two-piece"), 0);
  expect(gauging).toMatchObject({ rideHeight: "normal", wheels: "on-drive-on-lift", path: "gauging[0]" });
  expect(gauging.gauge).toEqual({
    resolution: degreesToRadians(0.1),
    accuracy: degreesToRadians(0.1),
    common: false,
    zeroCheck: [
      { value: degreesToRadians(0.3), path: "gauging[0].gauge.zeroCheck[0]" },
      { value: degreesToRadians(-0.3), path: "gauging[0].gauge.zeroCheck[1]" },
    ],
  });
  expect(gauging.readings.map((reading) => (reading.kind === "absolute" ? [reading.shaft, reading.place] : []))).toEqual([
    ["source", "face"],
    ["front", "source-end"],
    ["front", "driven-end"],
    ["back", "source-end"],
    ["back", "driven-end"],
    ["driven", "face"],
  ]);
  expect(gauging.readings[1]?.inclination).toBe(degreesToRadians(5.6));
});

test("headings take the usual accuracy of a tape or a protractor where none is given, and a section's own length", () => {
  const headings = toGauging(exampleCase("three-piece"), 0).headings;
  expect(headings).toEqual([
    // Runs rearward: chain +Y is the vehicle's right, so toward the left is negative.
    {
      kind: "offset",
      shaft: "front",
      lateral: -0.005,
      over: 0.91,
      accuracy: TAPE_ACCURACY_MM / 1000,
      path: "gauging[0].headings[0]",
    },
    { kind: "offset", shaft: "middle", lateral: 0, over: 1.12, accuracy: TAPE_ACCURACY_MM / 1000, path: "gauging[0].headings[1]" },
    {
      kind: "angle",
      shaft: "back",
      heading: degreesToRadians(0.4),
      accuracy: degreesToRadians(0.2),
      path: "gauging[0].headings[2]",
    },
  ]);
  expect(HEADING_ACCURACY_DEG).toBe(0.2);
});

test("a display of nought is plain nought whichever end was written down", () => {
  const document = exampleCase("one-piece");
  const [gauging] = document.gauging ?? [];
  const readings = [{ at: "source", deg: 0, lower: "source-end", side: "left" }];
  const changed = { ...document, gauging: [{ ...gauging, readings }] } as Case;
  expect(Object.is(toGauging(changed, 0).readings[0]?.inclination, 0)).toBe(true);
});
