import fc from "fast-check";
import { expect, test } from "vitest";
import { cosDegrees, degreesToRadians, radiansToDegrees, rpmToRadiansPerSecond, sinDegrees, wrapDegrees } from "./angle.js";
import { rpm } from "./brand.js";

/** Two roundings of the last digit. */
const RELATIVE = 2 * Number.EPSILON;
/** Below the normal numbers a factor loses all relative precision. */
const DENORMAL = 100 * Number.MIN_VALUE;
const degrees = fc.double({ min: -1e4, max: 1e4, noNaN: true });

test.each([
  [0, 0, 1],
  [90, 1, 0],
  [180, 0, -1],
  [270, -1, 0],
  [360, 0, 1],
  [-90, -1, 0],
  [-180, 0, -1],
  [-270, 1, 0],
  [36_090, 1, 0],
])("sine and cosine of %d degrees are exact", (angle, sine, cosine) => {
  // Adding 0 makes -0 and 0 one.
  expect(sinDegrees(angle) + 0).toBe(sine);
  expect(cosDegrees(angle) + 0).toBe(cosine);
});

test("sine and cosine in degrees are those in radians, and square to one", () => {
  fc.assert(
    fc.property(degrees, (angle) => {
      // The plain way rounds an angle of up to 200 radians before it takes the sine.
      const PLAIN = 200 * Number.EPSILON;
      expect(Math.abs(sinDegrees(angle) - Math.sin(degreesToRadians(angle)))).toBeLessThan(PLAIN);
      expect(Math.abs(cosDegrees(angle) - Math.cos(degreesToRadians(angle)))).toBeLessThan(PLAIN);
      expect(Math.abs(sinDegrees(angle) ** 2 + cosDegrees(angle) ** 2 - 1)).toBeLessThan(4 * Number.EPSILON);
      expect(Math.abs(sinDegrees(angle) + sinDegrees(-angle))).toBe(0);
    }),
  );
});

test("degrees and radians are each other's inverse", () => {
  expect(degreesToRadians(180)).toBe(Math.PI);
  fc.assert(
    fc.property(degrees, (angle) => {
      expect(Math.abs(radiansToDegrees(degreesToRadians(angle)) - angle)).toBeLessThanOrEqual(RELATIVE * Math.abs(angle) + DENORMAL);
    }),
  );
});

test("sixty revolutions a minute are one turn a second", () => {
  expect(Math.abs(rpmToRadiansPerSecond(rpm(60)) / (2 * Math.PI) - 1)).toBeLessThanOrEqual(RELATIVE);
});

test.each([
  [180, undefined, 180],
  [-180, undefined, 180],
  [181, undefined, -179],
  [540, undefined, 180],
  [-0, undefined, 0],
  [360, undefined, 0],
  [90, 90, 90],
  [-90, 90, 90],
  [91, 90, -89],
  [180, 90, 0],
] as const)("%d wrapped at %s is %d", (angle, half, expected) => {
  expect(wrapDegrees(angle, half)).toBe(expected);
});

test("a wrapped angle lies in (-half, half] and differs by whole periods", () => {
  fc.assert(
    fc.property(fc.integer({ min: -100_000, max: 100_000 }), fc.constantFrom(90 as const, 180 as const), (angle, half) => {
      const wrapped = wrapDegrees(angle, half);
      expect(wrapped).toBeGreaterThan(-half);
      expect(wrapped).toBeLessThanOrEqual(half);
      expect(Math.abs((angle - wrapped) % (2 * half))).toBe(0);
    }),
  );
});
