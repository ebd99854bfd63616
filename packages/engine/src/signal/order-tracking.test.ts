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
