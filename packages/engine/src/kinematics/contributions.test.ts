import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { angleBetween, directionOf, type ShaftPose } from "../geometry/index.js";
import { degreesToRadians, type Radians, radiansToDegrees } from "../units/index.js";
import { type Contributions, contributions } from "./contributions.js";
import type { Driveline, JointKind } from "./driveline.js";

/** Planar chains add exactly; what is left is rounding of a few dozen operations, magnified where the sum nearly vanishes (B is a root of it). */
const PLANAR = 1e-7;
/** Relative size of what the leading order leaves out, in units of (sum of B)^2, with room for six joints. */
const SECOND_ORDER = 0.5;

const pose = (inclination: number, heading = 0): ShaftPose => ({
  inclination: degreesToRadians(inclination),
  heading: degreesToRadians(heading),
});
const driveline = (kinds: readonly JointKind[], phasings: readonly (number | null)[]): Driveline => ({
  id: "rear",
  joints: kinds.map((kind, k) => ({ id: `J${k + 1}`, kind })),
  sections: phasings.map((phasing, k) => ({
    id: `s${k + 1}`,
    phasing: phasing === null ? null : degreesToRadians(phasing),
    phasingMeasured: true,
  })),
});
const crosses = (n: number): JointKind[] => new Array<JointKind>(n).fill("cross");
const parts = (line: Driveline, poses: readonly ShaftPose[]): Contributions => contributions(line, poses) as Contributions;
const degreesOf = (angle: Radians): number => radiansToDegrees(angle);

describe("contributions of the joints", () => {
  test("a single joint is its own sum: -2 ln cos B long, and the exact angle comes back", () => {
    const result = parts(driveline(["cross"], []), [pose(9), pose(-3)]);
    const [only] = result.joints;
    const expected = -2 * Math.log(Math.cos(degreesToRadians(12)));
    expect(Math.abs(Math.hypot(only?.re ?? 0, only?.im ?? 0) - expected)).toBeLessThan(1e-14);
    expect(Math.abs(result.fromSum - degreesToRadians(12))).toBeLessThan(1e-14);
  });

  test("equal angles in one plane with yokes in line oppose each other and leave nothing", () => {
    const result = parts(driveline(crosses(2), [0]), [pose(0), pose(5), pose(0)]);
    const [first, second] = result.joints;
    expect(Math.hypot((first?.re ?? 1) + (second?.re ?? 1), (first?.im ?? 1) + (second?.im ?? 1))).toBeLessThan(1e-14);
  });

  test("a quarter turn of phasing turns the second arrow round: both add", () => {
    const inLine = parts(driveline(crosses(2), [0]), [pose(0), pose(5), pose(0)]);
    const quarter = parts(driveline(crosses(2), [90]), [pose(0), pose(5), pose(0)]);
    expect(Math.abs(quarter.sum.re - 2 * (inLine.joints[0]?.re ?? 0))).toBeLessThan(1e-14);
  });

  test("3, 5 and 4 degrees in line leave 0.12, 1, 5 and 4 leave 2.83 degrees", () => {
    const chain = driveline(crosses(3), [0, 0]);
    const rounded = (angles: readonly [number, number, number]): number => {
      const [a, b, c] = angles;
      // Bends alternate, so that the bench sum is a - b + c.
      return Math.round(degreesOf(parts(chain, [pose(0), pose(a), pose(a + b), pose(a + b + c)]).fromSum) * 100) / 100;
    };
    expect(rounded([3, 5, 4])).toBe(0.12);
    expect(rounded([1, 5, 4])).toBe(2.83);
  });

  test("shafts in one plane, phased in line or a quarter turn: the sum is exact", () => {
    const chain = fc
      .integer({ min: 1, max: 6 })
      .chain((n) =>
        fc.tuple(
          fc.array(fc.constantFrom(0, 90, -90, 180), { minLength: n - 1, maxLength: n - 1 }),
          fc.array(fc.double({ min: -15, max: 15, noNaN: true }), { minLength: n + 1, maxLength: n + 1 }),
        ),
      );
    fc.assert(
      fc.property(chain, ([phasings, inclinations]) => {
        const result = parts(
          driveline(crosses(phasings.length + 1), phasings),
          inclinations.map((inclination) => pose(inclination)),
        );
        expect(Math.abs(result.fromSum - result.exact)).toBeLessThan(PLANAR);
      }),
    );
  });

  test("any chain: the arrow sum is the exact equivalent angle squared up to fourth order", () => {
    const chain = fc.integer({ min: 1, max: 6 }).chain((n) =>
      fc.tuple(
        fc.array(fc.double({ min: -180, max: 180, noNaN: true }), { minLength: n - 1, maxLength: n - 1 }),
        fc.array(fc.tuple(fc.double({ min: -6, max: 6, noNaN: true }), fc.double({ min: -6, max: 6, noNaN: true })), {
          minLength: n + 1,
          maxLength: n + 1,
        }),
      ),
    );
    fc.assert(
      fc.property(chain, ([phasings, angles]) => {
        const poses = angles.map(([inclination, heading]) => pose(inclination, heading));
        const result = parts(driveline(crosses(phasings.length + 1), phasings), poses);
        const bends = poses.slice(1).reduce((sum, next, k) => sum + angleBetween(directionOf(poses[k] as ShaftPose), directionOf(next)), 0);
        expect(Math.abs(result.fromSum ** 2 - result.exact ** 2)).toBeLessThan(SECOND_ORDER * bends ** 4 + 1e-15);
      }),
    );
  });

  test("joints that turn evenly have no arrow, and an unknown phasing that matters gives no picture", () => {
    const result = parts(driveline(["ball", "cross"], [null]), [pose(0), pose(5), pose(2)]);
    expect(result.joints[0]).toEqual({ joint: "J1", re: 0, im: 0 });
    expect(contributions(driveline(crosses(2), [null]), [pose(0), pose(5), pose(2)])).toBeNull();
  });

  test("a joint at a right angle or more gives no picture", () => {
    expect(contributions(driveline(crosses(2), [0]), [pose(45), pose(-46), pose(-40)])).toBeNull();
    expect(contributions(driveline(crosses(2), [0]), [pose(40), pose(-46), pose(-40)])?.exact).toBeGreaterThan(0);
  });
});
