import { expect, test } from "vitest";
import * as c from "../correction-cases.test-support.js";
import type { Adjuster } from "./adjuster.js";
import { amountsOf, stepOf } from "./amounts.js";

const inMm = (amounts: readonly number[]) => amounts.map((amount) => Math.round(amount * 1e6) / 1e3);

test("a range gives every step, nought left out, and a list gives its sizes", () => {
  expect(inMm(amountsOf(c.mountSpacer("m", c.rangeMm(0, 12, 3))))).toEqual([3, 6, 9, 12]);
  expect(inMm(amountsOf(c.mountSpacer("m", { kind: "sizes", sizes: [0.01, 0.004, 0, 0.004] })))).toEqual([4, 10]);
  // Steps of a tenth reach the end of the range in spite of rounding.
  expect(amountsOf(c.wedge("w", c.rangeDeg(-0.3, 0.3, 0.1))).length).toBe(6);
});

test("what is fitted may be taken out, whole or in stock sizes, and no more than that", () => {
  expect(inMm(amountsOf(c.mountSpacer("m", c.rangeMm(-9, 3, 3), { fittedMm: 7 })))).toEqual([-7, -6, -3, 3]);
  expect(inMm(amountsOf(c.supportDrop("d", c.rangeMm(-6, 6, 3)), "below-crossmember"))).toEqual([3, 6]);
  // A bearing on top of its crossmember is raised by a spacer, so that is the way in which something can be added.
  expect(inMm(amountsOf(c.supportDrop("d", c.rangeMm(-6, 6, 3)), "above-crossmember"))).toEqual([-6, -3]);
  // A wedge turns round, so it has two ways.
  expect(amountsOf(c.wedge("w", c.rangeDeg(-2, 2, 1))).length).toBe(4);
});

test("spline steps give every distinct phasing once", () => {
  const clock = (splineTeeth: number): Adjuster => ({
    kind: "rephase",
    id: "clock",
    labour: 1,
    parts: 0,
    stock: { kind: "sizes", sizes: [] },
    path: "adjusters[0]",
    drivelineId: "rear",
    sectionId: "s1",
    splineTeeth,
  });
  for (const teeth of [16, 17, 30, 31]) {
    const amounts = [0, ...amountsOf(clock(teeth))];
    const phasings = new Set(amounts.map((steps) => Math.round((((((steps * 360) / teeth) % 180) + 180) % 180) * 1e6) % 180e6));
    expect(phasings.size).toBe(amounts.length);
    expect(amounts.length).toBe(teeth % 2 === 0 ? teeth / 2 : teeth);
  }
});

test("the step that measures a change is the smallest gap of the stock", () => {
  expect(Math.abs(stepOf(c.mountSpacer("m", { kind: "sizes", sizes: [0.004, 0.01, 0.012] })) - 0.002)).toBeLessThan(1e-15);
  expect(stepOf(c.mountSpacer("m", c.rangeMm(0, 12, 3)))).toBe(0.003);
});
