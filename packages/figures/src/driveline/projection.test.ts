import { degreesToRadians } from "@halfturn/engine/units";
import { describe, expect, test } from "vitest";
import { samplePicture, TWO_PIECE } from "../sample-drivelines.test-support.js";
import { distance, type Point } from "../svg/point.js";
import { placeShafts } from "./place-shafts.js";
import { magnified, project, twinFactor } from "./projection.js";

/** Rounding of a handful of trigonometric operations. */
const ROUNDING = 1e-12;
const ROOM = { left: 10, right: 700, top: 20, tallest: 170, stub: 60, driven: 50, clearance: 30, beyond: 20 };
const slope = (a: Point, b: Point): number => Math.atan2(a.y - b.y, b.x - a.x);

describe("projection of a driveline", () => {
  test("true to scale: lengths on the sheet stand to one another as in the vehicle, slopes are the inclinations", () => {
    const straight = samplePicture({
      ...TWO_PIECE,
      shafts: TWO_PIECE.shafts.map(({ inclinationDeg }) => ({ inclinationDeg, headingDeg: 0 })),
    });
    const { joints, scale } = placeShafts(project(straight, "side"), ROOM);
    const [a, b, c] = joints as [Point, Point, Point];
    expect(Math.abs(distance(a, b) / scale - 1.18)).toBeLessThan(ROUNDING);
    expect(Math.abs(distance(b, c) / scale - 1.42)).toBeLessThan(ROUNDING);
    expect(Math.abs(slope(a, b) + degreesToRadians(4.6))).toBeLessThan(ROUNDING);
    expect(Math.abs(slope(b, c) + degreesToRadians(7.7))).toBeLessThan(ROUNDING);
  });

  test("the axle stands at its own distance", () => {
    const straight = samplePicture({
      ...TWO_PIECE,
      shafts: TWO_PIECE.shafts.map(({ inclinationDeg }) => ({ inclinationDeg, headingDeg: 0 })),
    });
    const { joints, end, scale } = placeShafts(project(straight, "side"), ROOM);
    expect(Math.abs(distance(joints[2] as Point, end) / scale - 0.33)).toBeLessThan(ROUNDING);
  });

  test("the driven end of an inclined shaft is lower on the sheet; a heading toward chain +Y goes up in the plan", () => {
    const picture = samplePicture({
      kinds: ["cross", "cross"],
      shafts: [{ inclinationDeg: 0 }, { inclinationDeg: 5, headingDeg: 5 }, { inclinationDeg: 0 }],
      lengthsM: [1],
    });
    const side = placeShafts(project(picture, "side"), ROOM).joints;
    const plan = placeShafts(project(picture, "plan"), ROOM).joints;
    expect((side[1] as Point).y).toBeGreaterThan((side[0] as Point).y);
    expect((plan[1] as Point).y).toBeLessThan((plan[0] as Point).y);
  });

  test("one missing length takes the scale away from all", () => {
    const projection = project(samplePicture({ ...TWO_PIECE, lengthsM: [1.18] }), "side");
    expect(projection.toScale).toBe(false);
    expect(project(samplePicture(TWO_PIECE), "side").toScale).toBe(true);
  });

  test("the twin multiplies every slope and keeps joints under one another", () => {
    const projection = project(samplePicture(TWO_PIECE), "side");
    const factor = twinFactor(projection, 1);
    const twin = magnified(projection, factor);
    expect(factor).toBe(3);
    twin.slopes.forEach((value, k) => {
      expect(value).toBe(factor * (projection.slopes[k] as number));
    });
    expect(twin.runs).toEqual(projection.runs);
  });

  test("unmeasured headings are known as such, gauged inclinations too", () => {
    const picture = samplePicture({
      ...TWO_PIECE,
      shafts: TWO_PIECE.shafts.map((shaft, k) => (k === 1 ? { inclinationDeg: null } : shaft)),
    });
    expect(project(picture, "side").known).toEqual([true, false, true, true]);
    expect(project(picture, "plan").known).toEqual([true, true, false, true]);
  });

  test("a twin that would get too tall is magnified less", () => {
    const projection = project(samplePicture(TWO_PIECE), "side");
    expect(twinFactor(projection, 0.25)).toBe(2);
  });
});
