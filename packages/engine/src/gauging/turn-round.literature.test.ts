import { expect, test } from "vitest";
import { degreesToRadians, type Radians, radiansToDegrees } from "../units/index.js";
import { fuseGauging } from "./fuse-gauging.js";
import { observationsOf } from "./observation.js";
import { absolute, drivelineWith, gaugingWith, inclinationsDeg } from "./sample-gauging.test-support.js";

const driveline = drivelineWith("front");
const ROUNDING_DEG = 1e-9;
/** The standard prints 0.29 times the step. */
const PRINTED_TWO_DIGITS = 0.005;

// Reversal of an inclinometer on one line, R1 = slope + zero, R2 = zero - slope: +3.4 and -2.8 give a zero of +0.3 (common practice, no source).
test("a turn-round check of +3.4 and -2.8 takes 0.3 off readings from one side and adds it to those from the other", () => {
  const readings = [absolute("source", "face", 2.3), absolute("front", "along", 1.7, -1)];
  const [source, front] = inclinationsDeg(fuseGauging(gaugingWith(readings, { zeroCheckDeg: [3.4, -2.8] }), driveline));
  expect(Math.abs((source as number) - 2)).toBeLessThan(ROUNDING_DEG);
  expect(Math.abs((front as number) - 2)).toBeLessThan(ROUNDING_DEG);
});

// JCGM 100:2008, F.2.2.1: a display step d gives u = 0.29 d; 4.3.7: a half width a gives u = a/sqrt 3 (both from memory).
test("rounding and accuracy of a reading", () => {
  const [reading] = observationsOf(gaugingWith([absolute("source", "face", 2)], { resolutionDeg: 0.1, accuracyDeg: 0.2 }), ["source"]);
  const u = (reading?.sources ?? []).map((source) => radiansToDegrees(source.u as Radians));
  expect(Math.abs((u[1] as number) / 0.1 - 0.29)).toBeLessThan(PRINTED_TWO_DIGITS);
  expect(Math.abs((u[0] as number) - 0.2 / Math.sqrt(3))).toBeLessThan(ROUNDING_DEG);
  expect(Math.abs((reading?.u ?? 0) - degreesToRadians(Math.hypot(0.2 / Math.sqrt(3), 0.1 / Math.sqrt(12))))).toBeLessThan(ROUNDING_DEG);
});
