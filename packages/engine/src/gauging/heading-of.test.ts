import { expect, test } from "vitest";
import { degreesToRadians, metres } from "../units/index.js";
import type { HeadingReading } from "./gauging.js";
import { headingOf } from "./heading-of.js";
import { gaugingWith } from "./sample-gauging.test-support.js";

const ROUNDING = 1e-14;
/** A central difference over 1e-5 rad is good to about its square. */
const DIFFERENCE = 1e-8;
const STEP = 1e-5;

const offset = (lateral: number, accuracy = 0.002): HeadingReading => ({
  kind: "offset",
  shaft: "front",
  lateral: metres(lateral),
  over: metres(1.2),
  accuracy: metres(accuracy),
  path: "gauging[0].headings[0]",
});
const angle = (deg: number, accuracyDeg: number): HeadingReading => ({
  kind: "angle",
  shaft: "front",
  heading: degreesToRadians(deg),
  accuracy: degreesToRadians(accuracyDeg),
  path: "gauging[0].headings[1]",
});
const headingWith = (inclination: number, ...headings: readonly HeadingReading[]) =>
  headingOf("front", inclination, gaugingWith([], { headings }));

test("an offset over a level shaft is a plain sine", () => {
  expect(Math.abs(headingWith(0, offset(0.6)).heading - degreesToRadians(30))).toBeLessThan(ROUNDING);
});

test("an offset of a sloping shaft is taken over its plan length", () => {
  const inclination = degreesToRadians(60);
  expect(Math.abs(headingWith(inclination, offset(0.3)).heading - degreesToRadians(30))).toBeLessThan(ROUNDING);
});

test("the law of errors has the slopes of the heading", () => {
  const inclination = degreesToRadians(12);
  const at = (lateral: number, i: number) => headingWith(i, offset(lateral)).heading;
  const { sources, byInclination } = headingWith(inclination, offset(0.2));
  const byLateral = (at(0.2 + STEP, inclination) - at(0.2 - STEP, inclination)) / (2 * STEP);
  expect(Math.abs((sources[0]?.u ?? 0) - (byLateral * 0.002) / Math.sqrt(3))).toBeLessThan(DIFFERENCE);
  const numeric = (at(0.2, inclination + STEP) - at(0.2, inclination - STEP)) / (2 * STEP);
  expect(Math.abs(byInclination - numeric)).toBeLessThan(DIFFERENCE);
});

test("several readings are averaged by weight", () => {
  const { heading, by } = headingWith(0, angle(1, 0.1), angle(2, 0.2));
  expect(Math.abs(heading - degreesToRadians(1.2))).toBeLessThan(ROUNDING);
  expect(Math.abs((by[0] ?? 0) - 0.8) + Math.abs((by[1] ?? 0) - 0.2)).toBeLessThan(ROUNDING);
});

test("an offset longer than the shaft is no measurement", () => {
  expect(headingWith(0, offset(1.3), angle(1, 0.1))).toMatchObject({ heading: 0, measured: false });
});
