import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { shaftAngleFromSpeeds } from "./shaft-angle.js";
import { must, sweptAngle, sweptTime } from "./shaft-angle.test-support.js";
import { risingEdges, shaftAngleFromPulses } from "./tachometer-angle.js";

/** Rounding of angles of some hundred radians. */
const ROUNDING = 1e-9;
const sweep = Array.from({ length: 60 }, (_, i) => sweptTime(10, 4)(i));
const turned = (angle: { readonly angleAt: (t: number) => number }, time: number): number =>
  Math.abs(angle.angleAt(time) - sweptAngle(10, 4)(time));

describe("pulses", () => {
  test.each([1, 5, 17, 58])("pulse %i is missing: it is counted in, and noted", (gone) => {
    const { angle, notes } = must(shaftAngleFromPulses(Float64Array.from(sweep.toSpliced(gone, 1)), 1));
    expect(notes).toMatchObject([{ code: "pulses.missing", pulse: gone, count: 1 }]);
    expect(turned(angle, 2.5)).toBeLessThan(ROUNDING);
  });
  test("two neighbours are missing", () => {
    const { angle, notes } = must(shaftAngleFromPulses(Float64Array.from(sweep.toSpliced(20, 2)), 1));
    expect(notes).toMatchObject([{ code: "pulses.missing", count: 2 }]);
    expect(turned(angle, 2.5)).toBeLessThan(ROUNDING);
  });
  test.each([0.05, 0.3, 0.5, 0.7, 0.95])("a false pulse a share of %f into a turn is dropped, and noted", (share) => {
    const extra = sweptTime(10, 4)(20 + share);
    const { angle, notes } = must(shaftAngleFromPulses(Float64Array.from(sweep.toSpliced(21, 0, extra)), 1));
    expect(notes).toEqual([{ code: "pulses.double", pulse: 21, time: extra, count: 1 }]);
    expect(turned(angle, 2.5)).toBeLessThan(ROUNDING);
  });
  test("several a turn", () => {
    const pulses = Float64Array.from({ length: 200 }, (_, i) => sweptTime(10, 4)(i / 4));
    expect(turned(must(shaftAngleFromPulses(pulses, 4)).angle, 2)).toBeLessThan(ROUNDING);
  });
  test("an edge lies where the line between samples crosses", () => {
    expect([...risingEdges(Float64Array.of(0, 1, 2, 3, 4), Float64Array.of(0, 1, 1, 0.25, 0.75))]).toEqual([0.5, 3.5]);
    expect([...risingEdges(Float64Array.of(0, 1, 2), Float64Array.of(Number.NaN, 1, 1))]).toEqual([]);
  });
  test("what cannot be used is said", () => {
    expect(shaftAngleFromPulses(Float64Array.of(1, 2), 1)).toMatchObject({ ok: false, code: "shaft-angle.too-few-pulses" });
    expect(shaftAngleFromPulses(Float64Array.of(1, 2, 2, 3), 1)).toMatchObject({ code: "shaft-angle.times-not-rising", path: "pulses[2]" });
    expect(shaftAngleFromPulses(Float64Array.of(1, Number.NaN, 2), 1)).toMatchObject({ code: "signal.not-finite", path: "pulses[1]" });
  });
});

const clock = fc.array(fc.tuple(fc.double({ min: 0.01, max: 2, noNaN: true }), fc.double({ min: 1, max: 400, noNaN: true })), {
  minLength: 2,
  maxLength: 40,
});

describe("speeds on their own clock", () => {
  test("a steady gain of speed integrates exactly", () => {
    const times = Float64Array.of(0, 0.3, 1, 1.1, 2, 3);
    const angle = must(
      shaftAngleFromSpeeds(
        times,
        times.map((t) => 2 * Math.PI * (10 + 4 * t)),
      ),
    );
    for (let t = 0; t <= 3; t += 0.1) expect(turned(angle, t)).toBeLessThan(ROUNDING);
  });
  test("the speed never leaves the range of the readings beside it, and time and angle undo each other", () => {
    fc.assert(
      fc.property(clock, (readings) => {
        let now = 0;
        const times = Float64Array.from(readings, ([gap]) => (now += gap));
        const speeds = Float64Array.from(readings, ([, speed]) => speed);
        const angle = must(shaftAngleFromSpeeds(times, speeds));
        for (let i = 0; i + 1 < times.length; i++) {
          const [low, high] = [Math.min(...speeds.slice(i, i + 2)), Math.max(...speeds.slice(i, i + 2))];
          const time = 0.3 * (times[i] as number) + 0.7 * (times[i + 1] as number);
          expect(angle.speedAt(time)).toBeGreaterThanOrEqual(low - ROUNDING);
          expect(angle.speedAt(time)).toBeLessThanOrEqual(high + ROUNDING);
          expect(Math.abs(angle.timeOf(angle.angleAt(time)) - time)).toBeLessThan(ROUNDING);
        }
      }),
    );
  });
  test("what cannot be used is said", () => {
    const two = Float64Array.of(0, 1);
    expect(shaftAngleFromSpeeds(two, Float64Array.of(1))).toMatchObject({ code: "signal.lengths-differ" });
    expect(shaftAngleFromSpeeds(Float64Array.of(0), Float64Array.of(1))).toMatchObject({ code: "shaft-angle.too-few-speeds" });
    expect(shaftAngleFromSpeeds(two, Float64Array.of(1, 0))).toMatchObject({ code: "shaft-angle.standstill", path: "speeds[1]" });
    expect(
      shaftAngleFromSpeeds(
        Float64Array.of(1, 1),
        two.map(() => 1),
      ),
    ).toMatchObject({ code: "shaft-angle.times-not-rising" });
    expect(shaftAngleFromSpeeds(two, Float64Array.of(1, Number.NaN))).toMatchObject({ code: "signal.not-finite" });
  });
});
