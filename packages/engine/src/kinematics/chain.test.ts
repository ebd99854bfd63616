import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { ShaftPose } from "../geometry/index.js";
import { degreesToRadians, type Radians, radiansToDegrees } from "../units/index.js";
import { type ArmMap, reverse } from "./arm-map.js";
import { bestPhasing } from "./best-phasing.js";
import { chainState, wholeChain } from "./chain.js";
import type { Driveline, JointKind } from "./driveline.js";
import {
  equivalentAngle,
  orderAmplitude,
  peakAccelerationCoefficient,
  speedRatioAt,
  transmissionErrorAt,
  transmissionErrorPeakToPeak,
  unevennessOf,
} from "./equivalent-joint.js";
import { deviation, harmonic, peak, sampleMotion } from "./sampled-arms.test-support.js";

/** The sampled check sums some hundred rounded sines; a relative 1e-6 and an absolute 1e-11 are far above that and far below any use. */
const SAMPLED = { relative: 1e-6, absolute: 1e-11 };
/** Two closed forms of the same thing differ by rounding only. */
const ROUNDING = 1e-12;
const SAMPLES = 256;

const close = (a: number, b: number): boolean => Math.abs(a - b) <= SAMPLED.absolute + SAMPLED.relative * Math.abs(b);

const pose = (inclination: number, heading: number): ShaftPose => ({
  inclination: degreesToRadians(inclination),
  heading: degreesToRadians(heading),
});

function driveline(kinds: readonly JointKind[], phasings: readonly number[]): Driveline {
  return {
    id: "rear",
    joints: kinds.map((kind, k) => ({ id: `J${k + 1}`, kind })),
    sections: phasings.map((phasing, k) => ({ id: `s${k + 1}`, phasing: degreesToRadians(phasing), phasingMeasured: true })),
  };
}

/** One to six joints, any phasing, each shaft within 15 degrees of level, so that operating angles run from 0 to 30. */
const chains = fc.integer({ min: 1, max: 6 }).chain((n) =>
  fc.record({
    line: fc
      .tuple(
        fc.array(fc.constantFrom<JointKind>("cross", "cross", "cross", "double-cross"), { minLength: n, maxLength: n }),
        fc.array(fc.double({ min: -180, max: 180, noNaN: true }), { minLength: n - 1, maxLength: n - 1 }),
      )
      .map(([kinds, phasings]) => driveline(kinds, phasings)),
    poses: fc.array(
      fc.oneof(
        fc.tuple(fc.double({ min: -15, max: 15, noNaN: true }), fc.double({ min: -15, max: 15, noNaN: true })),
        fc.constant<[number, number]>([3, 0]),
      ),
      { minLength: n + 1, maxLength: n + 1 },
    ),
  }),
);

describe("a chain of joints as one map", () => {
  test("has the motion of the sampled arms: error, orders, acceleration, of every section and the driven end", () => {
    fc.assert(
      fc.property(chains, ({ line, poses }) => {
        const lying = poses.map(([i, h]) => pose(i, h));
        const state = chainState(line, lying);
        const sampled = sampleMotion(line, lying, SAMPLES);
        state.fromSource.forEach((map, k) => {
          const row = deviation(sampled.turns[k] as number[]);
          const uneven = unevennessOf(map);
          expect(close(2 * peak(row, 0), transmissionErrorPeakToPeak(uneven))).toBe(true);
          expect(close(harmonic(row, 2), orderAmplitude(uneven, 1))).toBe(true);
          expect(close(harmonic(row, 4), orderAmplitude(uneven, 2))).toBe(true);
          expect(close(peak(row, 2), peakAccelerationCoefficient(uneven))).toBe(true);
          const apart = row.map((value, step) => Math.abs(transmissionErrorAt(map, (2 * Math.PI * step) / SAMPLES) - value));
          expect(Math.max(...apart)).toBeLessThan(1e-10);
        });
      }),
      { numRuns: 60 },
    );
  });

  test("run backwards is the chain of the shafts in reverse order", () => {
    fc.assert(
      fc.property(chains, ({ line, poses }) => {
        const lying = poses.map(([i, h]) => pose(i, h));
        const backward = chainState(
          { id: "back", joints: [...line.joints].reverse(), sections: [...line.sections].reverse() },
          // Seen from the other end every shaft rises where it fell and leads the other way: directions change sign, and a mirror in the horizontal keeps them in range.
          [...lying].reverse().map(({ inclination, heading }) => ({ inclination: -inclination as Radians, heading })),
        );
        const forward = chainState(line, lying);
        line.sections.forEach((_, k) => {
          const n = line.joints.length;
          const coast = unevennessOf(forward.toDriven[k + 1] as ArmMap);
          const mirrored = unevennessOf(backward.fromSource[n - 2 - k] as ArmMap);
          expect(Math.abs(coast - mirrored)).toBeLessThan(ROUNDING);
          expect(Math.abs(unevennessOf(reverse(forward.toDriven[k + 1] as ArmMap)) - coast)).toBeLessThan(ROUNDING);
        });
      }),
    );
  });

  test("keeps a mean ratio of one, extremes that are reciprocal, and the ratio that is the slope of the error", () => {
    fc.assert(
      fc.property(chains, ({ line, poses }) => {
        const whole = wholeChain(
          chainState(
            line,
            poses.map(([i, h]) => pose(i, h)),
          ),
        );
        const B = equivalentAngle(unevennessOf(whole));
        const ratios = Array.from({ length: 720 }, (_, step) => speedRatioAt(whole, (2 * Math.PI * step) / 720));
        expect(Math.abs(ratios.reduce((sum, ratio) => sum + ratio, 0) / 720 - 1)).toBeLessThan(1e-9);
        expect(Math.max(...ratios)).toBeLessThanOrEqual(1 / Math.cos(B) + ROUNDING);
        expect(Math.min(...ratios)).toBeGreaterThanOrEqual(Math.cos(B) - ROUNDING);
        const step = 1e-4;
        const slope = (transmissionErrorAt(whole, 0.3 + step) - transmissionErrorAt(whole, 0.3 - step)) / (2 * step);
        expect(Math.abs(1 + slope - speedRatioAt(whole, 0.3))).toBeLessThan(1e-6);
      }),
    );
  });

  test("depends on the sum of the phasings on both sides of a ball joint, wherever its mark is drawn", () => {
    const degree = fc.double({ min: -180, max: 180, noNaN: true });
    const angle = fc.double({ min: -15, max: 15, noNaN: true });
    const lying = fc.array(fc.tuple(angle, angle), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(lying, degree, degree, degree, (angles, first, second, mark) => {
        const poses = angles.map(([i, h]) => pose(i, h));
        const whole = (phasings: readonly number[]) =>
          unevennessOf(wholeChain(chainState(driveline(["cross", "ball", "cross"], phasings), poses)));
        expect(Math.abs(whole([first + mark, second - mark]) - whole([first, second]))).toBeLessThan(ROUNDING);
      }),
    );
  });

  test("goes through a straight ball joint as through a shaft that has none", () => {
    const [source, front, driven] = [pose(2, 1), pose(5, -3), pose(-1, 0)];
    const with3 = wholeChain(chainState(driveline(["cross", "ball", "cross"], [20, 37]), [source, front, front, driven]));
    const with2 = wholeChain(chainState(driveline(["cross", "cross"], [57]), [source, front, driven]));
    expect(Math.abs(unevennessOf(with3) - unevennessOf(with2))).toBeLessThan(ROUNDING);
  });

  test("does not change with the frame it is seen from", () => {
    fc.assert(
      fc.property(chains, fc.double({ min: -60, max: 60, noNaN: true }), ({ line, poses }, yaw) => {
        const here = wholeChain(
          chainState(
            line,
            poses.map(([i, h]) => pose(i, h)),
          ),
        );
        const there = wholeChain(
          chainState(
            line,
            poses.map(([i, h]) => pose(i, h + yaw)),
          ),
        );
        expect(Math.abs(unevennessOf(here) - unevennessOf(there))).toBeLessThan(ROUNDING);
      }),
    );
  });
});

describe("the best phasing of a section", () => {
  test("leaves no more than any other phasing", () => {
    fc.assert(
      fc.property(chains, fc.double({ min: -90, max: 90, noNaN: true }), ({ line, poses }, other) => {
        const lying = poses.map(([i, h]) => pose(i, h));
        const best = bestPhasing(line, lying);
        const left = (section: string, phasing: Radians): number =>
          unevennessOf(
            wholeChain(
              chainState({ ...line, sections: line.sections.map((each) => (each.id === section ? { ...each, phasing } : each)) }, lying),
            ),
          );
        for (const [section, phasing] of best) {
          expect(left(section, phasing)).toBeLessThanOrEqual(left(section, degreesToRadians(other)) + ROUNDING);
        }
      }),
    );
  });

  test("is a quarter turn where the angles of a two-piece shaft call for it, and in line where they cancel", () => {
    const line = driveline(["cross", "cross", "cross"], [90, 0]);
    const lying = [pose(2.4, 0), pose(5.6, 0), pose(5.1, 0), pose(2.1, 0)];
    const best = bestPhasing(line, lying);
    expect(Math.abs(Math.abs(radiansToDegrees(best.get("s1") as Radians)) - 90)).toBeLessThan(1e-9);
    expect(Math.abs(radiansToDegrees(best.get("s2") as Radians))).toBeLessThan(1e-9);
  });
});

describe("a single position", () => {
  test("of two equal joints in one plane leaves nothing, bent as a Z or as a W", () => {
    for (const driven of [0, 6]) {
      const state = chainState(driveline(["cross", "cross"], [0]), [pose(0, 0), pose(3, 0), pose(driven, 0)]);
      expect(unevennessOf(wholeChain(state))).toBeLessThan(1e-18);
    }
  });

  test("of shafts in line is no special case", () => {
    const state = chainState(driveline(["cross", "cross"], [33]), [pose(4, 2), pose(4, 2), pose(4, 2)]);
    expect(unevennessOf(wholeChain(state))).toBe(0);
    expect(state.joints.map(({ alongU, alongV }) => Math.hypot(alongU, alongV))).toEqual([0, 0]);
  });

  test("needs one pose more than joints", () => {
    expect(() => chainState(driveline(["cross"], []), [pose(0, 0)])).toThrow(RangeError);
  });
});
