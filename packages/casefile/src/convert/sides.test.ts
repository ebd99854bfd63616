import type { AbsoluteReading, DifferenceReading } from "@halfturn/engine/gauging";
import { directionOf, type ShaftPose } from "@halfturn/engine/geometry";
import { degreesToRadians, radians, radiansToDegrees } from "@halfturn/engine/units";
import fc from "fast-check";
import { expect, test } from "vitest";
import { restore } from "../restore/restore.js";
import type { Case, RunsToward, VehicleSide } from "../schema/case.js";
import { toGauging } from "./to-gauging.js";

/*
 * The signs of `sides.ts`, derived a second time and in another way: a shaft, a reader and a gauge are set up as vectors of the vehicle (X forward, Y left, Z up),
 * the gauge shows what it would show, a person writes the words down, and the conversion has to give back the pose that was put in.
 */
type Vector = readonly [x: number, y: number, z: number];
const UP: Vector = [0, 0, 1];
const cross = ([ax, ay, az]: Vector, [bx, by, bz]: Vector): Vector => [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
const dot = ([ax, ay, az]: Vector, [bx, by, bz]: Vector): number => ax * bx + ay * by + az * bz;
const negative = ([x, y, z]: Vector): Vector => [-x, -y, -z];

/** Degrees; sines and arc tangents of a few angles lose no more than this. */
const ROUNDING_DEG = 1e-9;

/** Chain axes written in the vehicle's. */
const chainX = (runs: RunsToward): Vector => (runs === "forward" ? [1, 0, 0] : [-1, 0, 0]);
const chainY = (runs: RunsToward): Vector => cross(UP, chainX(runs));

/** A shaft's direction in the vehicle, from its pose in the chain frame. */
function shaftInVehicle(pose: ShaftPose, runs: RunsToward): Vector {
  const { x, y, z } = directionOf(pose);
  const [ex, ey] = [chainX(runs), chainY(runs)];
  return [x * ex[0] + y * ey[0], x * ex[1] + y * ey[1], z];
}

/** The way a reader's right hand points who stands on one side of the vehicle and looks toward its middle. */
const readersRight = (side: VehicleSide): Vector => cross(side === "left" ? [0, -1, 0] : [0, 1, 0], UP);

/** What the gauge makes of a line that runs to the reader's right: degrees of fall toward the right, plus its zero. */
const fallToRight = (line: Vector, right: Vector): number =>
  radiansToDegrees(radians(Math.asin(-dot(dot(line, right) > 0 ? line : negative(line), UP))));

const drivenIsRight = (shaft: Vector, right: Vector): boolean => dot(shaft, right) > 0;

/** The words a person writes for a display of `shown` degrees, positive with display-right lower. */
const lowerEnd = (shown: number, shaft: Vector, right: Vector) => (shown > 0 === drivenIsRight(shaft, right) ? "driven-end" : "source-end");

function gauged(runs: RunsToward, zero: number, levelness: number, parts: object): Case {
  const shown = [levelness + zero, -levelness + zero];
  const restored = restore({
    format: "halfturn-case",
    version: 1,
    id: "s",
    title: "s",
    createdAt: "2026-01-02",
    drivelines: [
      {
        id: "d",
        runs,
        sections: [{ id: "one", lengthMm: 1000 }],
        joints: [
          { id: "J1", kind: "cross" },
          { id: "J2", kind: "cross" },
        ],
      },
    ],
    gauging: [
      {
        driveline: "d",
        stage: "as-found",
        state: { rideHeight: "normal", wheels: "on-ground" },
        gauge: {
          resolutionDeg: 0.1,
          accuracyDeg: 0.1,
          zeroCheck: shown.map((deg) => ({ deg: Math.abs(deg), lower: deg > 0 ? "display-right" : "display-left" })),
        },
        readings: [],
        ...parts,
      },
    ],
  });
  if (!restored.ok) throw new Error(JSON.stringify(restored.problems));
  return restored.case;
}

const runs = fc.constantFrom<RunsToward>("rearward", "forward");
const side = fc.constantFrom<VehicleSide>("left", "right");
const angle = (limit: number) => fc.double({ min: -limit, max: limit, noNaN: true });

const zeroOf = (document: Case): number => {
  const [first, turned] = toGauging(document, 0).gauge.zeroCheck;
  if (!first || !turned) throw new Error("the zero was checked");
  return (radiansToDegrees(first.value) + radiansToDegrees(turned.value)) / 2;
};
const trueInclination = (reading: AbsoluteReading | DifferenceReading, zero: number): number =>
  radiansToDegrees(reading.inclination) - reading.zeroSign * zero;
const away = (a: number, b: number): number => Math.abs(a - b);

test("a reading along a shaft, less the zero that the turn-round check shows, is the inclination of the chain frame", () => {
  fc.assert(
    fc.property(runs, side, angle(40), angle(20), angle(2), angle(2), (toward, from, inclination, heading, zero, levelness) => {
      const shaft = shaftInVehicle({ inclination: degreesToRadians(inclination), heading: degreesToRadians(heading) }, toward);
      const right = readersRight(from);
      const shown = fallToRight(shaft, right) + zero;
      const readings = [{ at: "one:source-end", deg: Math.abs(shown), lower: lowerEnd(shown, shaft, right), side: from }];
      const document = gauged(toward, zero, levelness, { readings });
      const [reading] = toGauging(document, 0).readings;
      if (reading?.kind !== "absolute") throw new Error("one reading was written");
      expect(reading).toMatchObject({ shaft: "one", place: "source-end", path: "gauging[0].readings[0]" });
      expect(away(zeroOf(document), zero)).toBeLessThan(ROUNDING_DEG);
      expect(away(trueInclination(reading, zeroOf(document)), inclination)).toBeLessThan(ROUNDING_DEG);
    }),
  );
});

test("so is a reading of a face across the shaft, whichever way the gauge was stood against it", () => {
  fc.assert(
    fc.property(runs, side, fc.boolean(), angle(40), angle(2), (toward, from, baseUp, inclination, zero) => {
      const shaft = shaftInVehicle({ inclination: degreesToRadians(inclination), heading: degreesToRadians(0) }, toward);
      const right = readersRight(from);
      // The face runs square to the shaft in the plane that the reader sees; the gauge's own right end points up or down it.
      const upFace = cross(cross(shaft, UP), shaft);
      const gaugeRight = baseUp ? upFace : negative(upFace);
      const clockwise = radiansToDegrees(radians(Math.atan2(-dot(gaugeRight, UP), dot(gaugeRight, right))));
      const offPlumb = clockwise + zero - (baseUp ? -90 : 90);
      // A face turned clockwise leans with its top to the reader's right.
      const topToRight = offPlumb > 0;
      const topLeans = topToRight === drivenIsRight(shaft, right) ? "driven-end" : "source-end";
      const document = gauged(toward, zero, 0, {
        readings: [{ at: "driven", face: "square", deg: Math.abs(offPlumb), topLeans, side: from }],
      });
      const [reading] = toGauging(document, 0).readings;
      if (reading?.kind !== "absolute") throw new Error("one reading was written");
      expect(reading).toMatchObject({ shaft: "driven", place: "face" });
      expect(away(trueInclination(reading, zeroOf(document)), inclination)).toBeLessThan(ROUNDING_DEG);
    }),
  );
});

test("a zeroed reading is the difference of two inclinations, and has the sign of its side", () => {
  fc.assert(
    fc.property(runs, side, angle(20), angle(20), angle(2), (toward, from, source, one, zero) => {
      const right = readersRight(from);
      const [a, b] = [source, one].map((inclination) =>
        shaftInVehicle({ inclination: degreesToRadians(inclination), heading: degreesToRadians(0) }, toward),
      );
      if (!a || !b) throw new Error("two shafts were set up");
      // The display was set to nought on the first shaft, so the gauge's own zero is gone from what it shows on the second.
      const shown = fallToRight(b, right) + zero - (fallToRight(a, right) + zero);
      const readings = [{ between: ["source", "one"], deg: Math.abs(shown), lower: lowerEnd(shown, b, right), side: from }];
      const [reading] = toGauging(gauged(toward, zero, 0, { readings }), 0).readings;
      if (reading?.kind !== "difference") throw new Error("one zeroed reading was written");
      expect([reading.from, reading.to]).toEqual(["source", "one"]);
      expect(away(radiansToDegrees(reading.inclination), one - source)).toBeLessThan(ROUNDING_DEG);
      // Had it not been zeroed, the gauge's zero would have entered as in any reading from that side.
      expect(reading.zeroSign).toBe(drivenIsRight(b, right) ? 1 : -1);
    }),
  );
});

test("a sideways offset and a plan-view angle turn toward chain +Y", () => {
  fc.assert(
    fc.property(runs, angle(30), (toward, heading) => {
      const shaft = shaftInVehicle({ inclination: degreesToRadians(0), heading: degreesToRadians(heading) }, toward);
      const leftward = dot(shaft, [0, 1, 0]);
      const word = leftward > 0 ? "left" : "right";
      const headings = [
        { of: "one", lateralMm: Math.abs(leftward) * 1000, toward: word },
        { of: "one", deg: Math.abs(heading), toward: word, accuracyDeg: 0.5 },
      ];
      const [offset, plan] = toGauging(gauged(toward, 0, 0, { headings }), 0).headings;
      if (offset?.kind !== "offset" || plan?.kind !== "angle") throw new Error("two headings were written");
      expect(away(radiansToDegrees(radians(Math.asin(offset.lateral / offset.over))), heading)).toBeLessThan(ROUNDING_DEG);
      expect(away(radiansToDegrees(plan.heading), heading)).toBeLessThan(ROUNDING_DEG);
    }),
  );
});
