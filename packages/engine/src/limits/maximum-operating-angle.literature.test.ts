import { expect, test } from "vitest";
import { degreesToRadians, radiansToDegrees, rpm, rpmToRadiansPerSecond } from "../units/index.js";
import { DEFAULT_LIMITS } from "./default-limits.js";
import { angleOfAcceleration, maximumOperatingAngle } from "./maximum-operating-angle.js";

/** The reference column uses the small-angle law a = w^2 B^2, low by up to 0.7 % in a at the angles listed here, hence high by half that in B. */
const SMALL_ANGLE_LAW = 0.004;

// Angle for 1000 rad/s2 by the small-angle law, computed from a = w^2 B^2 (mechanics reference, section 4.2).
const SMALL_ANGLE: readonly (readonly [number, number])[] = [
  [1500, 11.5346],
  [2000, 8.651],
  [2500, 6.9208],
  [3000, 5.7673],
  [3500, 4.9434],
  [4000, 4.3255],
  [5000, 3.4604],
];

test.each(SMALL_ANGLE)("at %i rpm a single joint reaches 1000 rad/s2 at about %f degrees", (speed, published) => {
  const exact = radiansToDegrees(angleOfAcceleration(1000, rpmToRadiansPerSecond(rpm(speed))));
  expect(Math.abs(exact / published - 1)).toBeLessThan(SMALL_ANGLE_LAW);
  expect(exact).toBeLessThan(published);
});

// The widely printed table of angle against speed (from memory, common practice). It prints one decimal and rests on about 1000 rad/s2 below 4000 rpm.
const PRINTED: readonly (readonly [number, number])[] = [
  [3500, 5.0],
  [3000, 5.8],
  [2500, 7.0],
  [2000, 8.7],
  [1500, 11.5],
];
const PRINTED_TABLE = 0.1;

test.each(PRINTED)("at %i rpm the default limit is the printed %f degrees", (speed, printed) => {
  const joint = { id: "J1", kind: "cross" } as const;
  const limit = radiansToDegrees(maximumOperatingAngle(joint, rpmToRadiansPerSecond(rpm(speed)), DEFAULT_LIMITS));
  expect(Math.abs(limit - printed)).toBeLessThan(PRINTED_TABLE);
});

test("a slow shaft is bounded by the joint, not by acceleration, and a maker's angle goes before the kind's", () => {
  const slow = rpmToRadiansPerSecond(rpm(300));
  expect(maximumOperatingAngle({ id: "J1", kind: "cross" }, slow, DEFAULT_LIMITS)).toBe(DEFAULT_LIMITS.jointAngle.cross.value);
  expect(maximumOperatingAngle({ id: "J1", kind: "cross", statedAngle: degreesToRadians(7) }, slow, DEFAULT_LIMITS)).toBe(
    degreesToRadians(7),
  );
  expect(maximumOperatingAngle({ id: "J1", kind: "ball" }, slow, DEFAULT_LIMITS)).toBe(DEFAULT_LIMITS.jointAngle.ball.value);
});
