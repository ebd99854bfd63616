import {
  chainState,
  orderAmplitude,
  peakAccelerationCoefficient,
  speedRatioAt,
  transmissionErrorAt,
  transmissionErrorPeakToPeak,
  unevennessOf,
  unevennessOfAngle,
  wholeChain,
} from "@halfturn/engine/kinematics";
import { degreesToRadians, radiansToDegrees } from "@halfturn/engine/units";
import { describe, expect, test } from "vitest";
import { crossJoints, pose } from "./build-chain.js";

/** The tables print nine decimals of ratios and coefficients, seven of degrees, six of position differences: half a unit in the last place. */
const RATIO_DIGITS = 0.6e-9;
const LEAD_DIGITS = 0.6e-7;
const POSITION_DIGITS = 0.6e-6;

// F3, F4, F5, F6 with F7: extremes (Elbe, technical data sheet 2), non-uniformity (Dana/GWB catalogue page 20), lead and peak acceleration
// (Khurmi and Gupta, Theory of Machines, 14th ed., ch. 9; exact maximum derived), recomputed in double precision. Degrees, cos b, 1/cos b, peak lead in degrees, peak a/w^2.
// biome-ignore-start lint/suspicious/noApproximativeNumericConstant: as printed
const MASTER: readonly (readonly [number, number, number, number, number])[] = [
  [0.5, 0.999961923, 1.000038078, 0.0010908, 0.000076155],
  [1, 0.999847695, 1.000152328, 0.0043635, 0.000304633],
  [3, 0.998629535, 1.001372346, 0.0392879, 0.002742816],
  [5, 0.996194698, 1.003819838, 0.1092217, 0.00762525],
  [8, 0.990268069, 1.009827573, 0.2801637, 0.019561374],
  [10, 0.984807753, 1.015426612, 0.4385614, 0.030626034],
  [15, 0.965925826, 1.03527618, 0.993122, 0.069433639],
  [20, 0.939692621, 1.064177772, 1.7816819, 0.124965577],
  [30, 0.866025404, 1.154700538, 4.1171943, 0.294571099],
  [45, 0.707106781, 1.414213562, 9.8792819, 0.787200324],
];
// biome-ignore-end lint/suspicious/noApproximativeNumericConstant: as printed

// F1, position difference of driven against driving shaft at 15, 30, 45, 60, 75 degrees from the driving yoke lying in the plane of the shafts
// (tan of one over tan of the other is cos b: Dana/GWB cardan catalogue; Elbe).
const POSITION: readonly (readonly [number, readonly number[]])[] = [
  [3, [0.019656, 0.034036, 0.039288, 0.034013, 0.019632]],
  [10, [0.220741, 0.381255, 0.438549, 0.378348, 0.217834]],
  [20, [0.915266, 1.566704, 1.780821, 1.518762, 0.867277]],
  [45, [5.753571, 9.23152, 9.73561, 7.792346, 4.271417]],
];

describe("one cross joint", () => {
  test.each(MASTER)("at %f degrees has the published extremes, lead and acceleration", (angle, least, greatest, lead, acceleration) => {
    const whole = wholeChain(chainState(crossJoints([]), [pose(0), pose(angle)]));
    const turns = Array.from({ length: 3601 }, (_, step) => speedRatioAt(whole, (Math.PI * step) / 3600));
    expect(Math.abs(Math.min(...turns) - least)).toBeLessThan(RATIO_DIGITS);
    expect(Math.abs(Math.max(...turns) - greatest)).toBeLessThan(RATIO_DIGITS);
    const uneven = unevennessOf(whole);
    expect(Math.abs(radiansToDegrees(transmissionErrorPeakToPeak(uneven)) / 2 - lead)).toBeLessThan(LEAD_DIGITS);
    expect(Math.abs(peakAccelerationCoefficient(uneven) - acceleration)).toBeLessThan(RATIO_DIGITS);
  });

  test.each(POSITION)("at %f degrees leads and lags as published", (angle, differences) => {
    const whole = wholeChain(chainState(crossJoints([]), [pose(0), pose(angle)]));
    // The shafts bend in the upright plane, so the driving yoke lies in their plane a quarter turn from the sideways basis.
    differences.forEach((published, k) => {
      const turn = degreesToRadians(90 + 15 * (k + 1));
      expect(Math.abs(radiansToDegrees(transmissionErrorAt(whole, turn)) - published)).toBeLessThan(POSITION_DIGITS);
    });
  });

  // Khurmi and Gupta, examples 9.2 and 9.5 (worked solutions read; the printed figures are rounded on the way, which costs up to 0.2 %).
  test("reproduces the worked examples of the textbook", () => {
    const speed = (1500 * 2 * Math.PI) / 60;
    expect(Math.abs((peakAccelerationCoefficient(unevennessOfAngle(degreesToRadians(20))) * speed ** 2) / 3080 - 1)).toBeLessThan(0.002);
    const whole = wholeChain(chainState(crossJoints([]), [pose(0), pose(16.4)]));
    expect(Math.abs(1200 * speedRatioAt(whole, Math.PI / 2) - 1251)).toBeLessThan(0.5);
    expect(Math.abs(1200 * speedRatioAt(whole, 0) - 1151)).toBeLessThan(0.5);
  });

  test("has orders 2 and 4 of the series of tan^2(b/2)", () => {
    // Exact: k and k^2/2 with k = tan^2(b/2); at 20 degrees k = 0.0310912041 (computed).
    expect(Math.abs(orderAmplitude(unevennessOfAngle(degreesToRadians(20)), 1) - 0.0310912041)).toBeLessThan(1e-10);
    expect(Math.abs(orderAmplitude(unevennessOfAngle(degreesToRadians(20)), 2) - 0.0310912041 ** 2 / 2)).toBeLessThan(1e-11);
  });
});
