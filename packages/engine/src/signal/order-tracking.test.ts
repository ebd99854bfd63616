import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cubicSpline } from "./cubic-spline.js";
import { orderCut, resampleByAngle, samplesPerTurnFor } from "./order-tracking.js";
import { shaftAngleFromSpeeds } from "./shaft-angle.js";
import { must } from "./shaft-angle.test-support.js";

/** Rounding of sums of some hundred values of size 1. */
const ROUNDING = 1e-9;
const steady = must(shaftAngleFromSpeeds(Float64Array.of(0, 2), Float64Array.of(20 * Math.PI, 20 * Math.PI)));

describe("the spline", () => {
  test("goes through its samples and keeps straight lines", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 2, maxLength: 50 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (y, share) => {
          const at = cubicSpline(Float64Array.from(y));
          for (const [i, value] of y.entries()) expect(Math.abs(at(i) - value)).toBeLessThan(ROUNDING);
          const line = cubicSpline(Float64Array.from(y, (_, i) => 2 * i - 1));
          const place = share * (y.length - 1);
          expect(Math.abs(line(place) - (2 * place - 1))).toBeLessThan(ROUNDING);
        },
      ),
    );
  });
  test("has no kink: the slopes on both sides of a sample agree", () => {
    const at = cubicSpline(Float64Array.of(0, 1, -1, 0.5, 2, 0));
    const h = 1e-5;
    // A second-order difference of a function with curvature below 20 leaves at most 20 h.
    for (let i = 1; i < 5; i++) expect(Math.abs(at(i + h) - 2 * at(i) + at(i - h)) / h).toBeLessThan(20 * h + ROUNDING);
  });
});

describe("sampling by angle", () => {
  test("takes whole turns of what signal and angle both cover", () => {
    const tracked = must(resampleByAngle({ samples: new Float64Array(1001), rate: 1000, start: 0.55 }, steady, 16));
    expect(tracked.samples.length).toBe(10 * 16);
    expect(Math.abs(tracked.start - 11 * Math.PI)).toBeLessThan(ROUNDING);
  });
  test("a phase is counted from the shaft's own mark, wherever the recording starts", () => {
    const start = 0.237;
    const samples = Float64Array.from({ length: 1500 }, (_, n) => Math.cos(2 * (20 * Math.PI * (start + n / 1000)) - 1));
    const tracked = must(resampleByAngle({ samples, rate: 1000, start }, steady, 64));
    const { phases } = must(orderCut(tracked, 2, 4));
    // The spline at 20 Hz of 1000 Hz is good to 1e-4 rad.
    for (const phase of phases) expect(Math.abs(phase + 1)).toBeLessThan(1e-4);
  });
  test("enough samples per turn: nothing folds at the slowest speed", () => {
    expect(samplesPerTurnFor(2048, 2 * Math.PI * 10)).toBe(256);
  });
  test("what cannot be done is said", () => {
    expect(resampleByAngle({ samples: new Float64Array(50), rate: 1000, start: 0 }, steady, 16)).toMatchObject({
      code: "order-tracking.no-whole-turns",
    });
    expect(resampleByAngle({ samples: new Float64Array(50), rate: 1000, start: 9 }, steady, 16)).toMatchObject({
      code: "order-tracking.no-whole-turns",
    });
    expect(resampleByAngle({ samples: new Float64Array(1), rate: 1000, start: 0 }, steady, 16)).toMatchObject({
      code: "signal.no-samples",
    });
    const short = must(resampleByAngle({ samples: new Float64Array(500), rate: 1000, start: 0 }, steady, 16));
    expect(orderCut(short, 1, 8)).toMatchObject({ code: "signal.too-short" });
  });
});

test("a spline keeps of a tone what its frequency response says: 99.9 % of one with seven samples to the period", () => {
  const kept = (perPeriod: number): number => {
    const w = (2 * Math.PI) / perPeriod;
    const at = cubicSpline(Float64Array.from({ length: 60 * perPeriod }, (_, n) => Math.cos(w * n)));
    // Whole periods well inside, in steps that fall everywhere between the samples.
    const steps = 10_000;
    let sum = 0;
    for (let k = 0; k < steps; k++) {
      const place = 20 * perPeriod + (20 * perPeriod * k) / steps;
      sum += (2 / steps) * at(place) * Math.cos(w * place);
    }
    return sum;
  };
  const response = (w: number): number => (Math.sin(w / 2) / (w / 2)) ** 4 / ((2 + Math.cos(w)) / 3);
  // The sum over steps is exact but for what the spline puts at higher frequencies, which no step of this grid repeats.
  for (const perPeriod of [4, 7, 8, 16]) expect(Math.abs(kept(perPeriod) - response((2 * Math.PI) / perPeriod))).toBeLessThan(1e-9);
  expect(kept(7)).toBeGreaterThan(0.9989);
});
