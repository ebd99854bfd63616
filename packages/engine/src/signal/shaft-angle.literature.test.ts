import { describe, expect, test } from "vitest";
import { must, sweptAngle, sweptTime } from "./shaft-angle.test-support.js";
import { shaftAngleFromPulses } from "./tachometer-angle.js";

/** Nine decimals of a second. */
const NANOSECOND = 0.6e-9;
/** Six decimals of rad/s and rad/s^2. */
const SIX_DECIMALS = 0.6e-6;

// A shaft at 10 Hz + 2 Hz/s with one pulse a turn; computed from theta = 2 pi (10 t + t^2).
const PULSES = [0, 0.099019514, 0.196152423, 0.291502622, 0.385164807, 0.477225575, 0.567764363, 0.656854249];

describe("a shaft that gains speed evenly (quadratic through three pulses, Fyfe and Munck 1997)", () => {
  const exact = Float64Array.from(PULSES.keys(), sweptTime(10, 2));
  const { angle, notes } = must(shaftAngleFromPulses(exact, 1));
  test("has its pulses where they were computed", () => {
    for (const [i, time] of PULSES.entries()) expect(Math.abs((exact[i] as number) - time)).toBeLessThan(NANOSECOND);
  });
  test.each([
    [1.5 * Math.PI, 0.074445783],
    [3 * Math.PI, 0.14781507],
  ])("reaches %f rad at %f s", (turned, time) => {
    expect(Math.abs(angle.timeOf(turned) - time)).toBeLessThan(NANOSECOND);
  });
  test("starts with b1 = 62.831853 rad/s and 2 b2 = 12.566371 rad/s^2", () => {
    expect(Math.abs(angle.speedAt(0) - 62.831853)).toBeLessThan(SIX_DECIMALS);
    expect(Math.abs((angle.speedAt(0.05) - angle.speedAt(0)) / 0.05 - 2 * 6.283185)).toBeLessThan(2 * SIX_DECIMALS);
  });
  test("is followed exactly between pulses, and gives rise to no note", () => {
    for (let t = 0; t < 0.65; t += 0.01) expect(Math.abs(angle.angleAt(t) - sweptAngle(10, 2)(t))).toBeLessThan(NANOSECOND);
    expect(notes).toEqual([]);
  });
});
