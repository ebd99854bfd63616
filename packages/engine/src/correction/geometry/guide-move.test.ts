import fc from "fast-check";
import { expect, test } from "vitest";
import * as c from "../correction-cases.test-support.js";
import type { AxleGuide, SideViewLink } from "../model/index.js";
import { guideMove, guideRateUncertainty, noseUp } from "./guide-move.js";
import { newGuidePlace } from "./guide-place.js";

/** Link lengths are met to this, metres. */
const MET = 1e-12;

const link = (frameForward: number, frameUp: number, axleForward: number, axleUp: number): SideViewLink => ({
  frameForward: c.mm(frameForward),
  frameUp: c.mm(frameUp),
  axleForward: c.mm(axleForward),
  axleUp: c.mm(axleUp),
});

const moved = (guide: AxleGuide, rise: number, lower = 0, upper = 0) => {
  const out = newGuidePlace();
  guideMove(guide, "rearward", rise, lower, upper, out);
  return out;
};

test("parallel level links of one length do not turn the axle", () => {
  const guide: AxleGuide = { kind: "links", lower: link(600, -80, 0, -80), upper: link(600, 120, 0, 120) };
  const { turn, forward, reached } = moved(guide, 0.05);
  expect(reached).toBe(true);
  expect(Math.abs(turn)).toBeLessThan(MET);
  // 600 mm swung 50 mm: 600 - sqrt(600^2 - 50^2) = 2.086960 mm toward the frame.
  expect(Math.abs(forward - 0.00208696)).toBeLessThan(1e-8);
});

test("any reachable place keeps both links' lengths, and a link made longer is longer", () => {
  const coordinate = fc.integer({ min: -60, max: 60 });
  fc.assert(
    fc.property(
      coordinate,
      coordinate,
      coordinate,
      fc.integer({ min: -80, max: 80 }),
      fc.integer({ min: -15, max: 15 }),
      (a, b, x, rise, longer) => {
        const guide: AxleGuide = { kind: "links", lower: link(620, -70 + a, x, -90), upper: link(500, 150 + b, 20, 130) };
        const { turn, forward, reached } = moved(guide, rise / 1000, longer / 1000, 0);
        expect(reached).toBe(true);
        const end = (each: SideViewLink) => {
          const px = forward + each.axleForward * Math.cos(turn) + each.axleUp * Math.sin(turn);
          const pz = -rise / 1000 - each.axleForward * Math.sin(turn) + each.axleUp * Math.cos(turn);
          return Math.hypot(px - each.frameForward, pz - each.frameUp);
        };
        const length = (each: SideViewLink) => Math.hypot(each.axleForward - each.frameForward, each.axleUp - each.frameUp);
        expect(Math.abs(end(guide.lower) - length(guide.lower) - longer / 1000)).toBeLessThan(MET);
        expect(Math.abs(end(guide.upper) - length(guide.upper))).toBeLessThan(MET);
      },
    ),
    { numRuns: 100, seed: 5 },
  );
});

test("with links in front of a rear axle a longer lower one presses the pinion's nose down and a longer upper one lifts it", () => {
  const guide: AxleGuide = { kind: "links", lower: link(600, -80, 0, -80), upper: link(600, 120, 0, 120) };
  // One end of the axle goes rearward by 10 mm, 200 mm from the other, which stays: sine of the turn 10/200 to first order.
  const FIRST_ORDER = 0.001;
  expect(Math.abs(noseUp("rearward", moved(guide, 0, 0.01, 0).turn) + 0.05)).toBeLessThan(FIRST_ORDER);
  expect(Math.abs(noseUp("rearward", moved(guide, 0, 0, 0.01).turn) - 0.05)).toBeLessThan(FIRST_ORDER);
});

test("a leaf spring with equal halves keeps its seat level; unequal halves turn it by rise (1/b - 1/a)", () => {
  const even: AxleGuide = { kind: "leaf", fixedEyeForward: c.mm(600), fixedEyeUp: c.mm(50), shackleEyeForward: c.mm(-600) };
  expect(moved(even, 0.04).turn).toBe(0);
  const uneven: AxleGuide = { ...even, shackleEyeForward: c.mm(-700) };
  // 0.04 (1/0.7 - 1/0.6) = -0.00952381 rad: the nose of a rear pinion rises when the body does.
  expect(Math.abs(moved(uneven, 0.04).turn + 0.00952381)).toBeLessThan(1e-8);
  expect(noseUp("rearward", moved(uneven, 0.04).turn)).toBeGreaterThan(0);
});

test("links pulled apart beyond their length are out of reach, not a number that is none", () => {
  const guide: AxleGuide = { kind: "links", lower: link(200, 0, 0, 0), upper: link(200, 150, 0, 150) };
  const { turn, forward, reached } = moved(guide, 0.4);
  expect(reached).toBe(false);
  expect(Number.isFinite(turn) && Number.isFinite(forward)).toBe(true);
});

test("the tape's error on the links makes an error of the turn that falls with the links' distance", () => {
  const near: AxleGuide = { kind: "links", lower: link(600, -30, 0, -30), upper: link(520, 60, 0, 70) };
  const far: AxleGuide = { kind: "links", lower: link(600, -90, 0, -90), upper: link(520, 180, 0, 210) };
  expect(guideRateUncertainty(near, "rearward", 0.002)).toBeGreaterThan(2 * guideRateUncertainty(far, "rearward", 0.002));
  expect(guideRateUncertainty(null, "rearward", 0.002)).toBe(0);
});
