import { angleBetween, directionOf, type ShaftPose } from "@halfturn/engine/geometry";
import { benchSigns, benchSum, chainState, nearlyPlanar } from "@halfturn/engine/kinematics";
import { cosDegrees, metres, radiansToDegrees } from "@halfturn/engine/units";
import { describe, expect, test } from "vitest";
import { crossJoints, equivalentDeg, planarPoses, pose } from "./build-chain.js";

/** The tables print six decimals (some five) of degrees. */
const SIX_DECIMALS = 0.6e-6;
const FIVE_DECIMALS = 0.6e-5;
/** Where the last digit is cut off rather than rounded: two units in the sixth decimal. */
const LAST_DIGIT_CUT = 2e-6;
/** Cancelling exactly leaves what rounding leaves: the square root of a few units in the sixteenth decimal, in degrees. */
const NOTHING_LEFT = 1e-6;

const jointAngles = (poses: readonly ShaftPose[]): number[] =>
  poses.slice(1).map((after, k) => radiansToDegrees(angleBetween(directionOf(poses[k] as ShaftPose), directionOf(after))));

describe("two joints in one plane, yokes in line", () => {
  // M1, exact rule cos(b_eq) = cos b1 / cos b2; derived, agrees with a 3-D simulation of 32 cases.
  const PAIRS: readonly (readonly [number, number, number])[] = [
    [3, 3, 0],
    [1.5, 0.5, 1.414232],
    [2, 1, 1.732139],
    [3, 2, 2.236522],
    [4, 3, 2.646961],
    [5, 4, 3.002441],
    [6, 4.5, 3.972716],
    [5, 3.5, 3.572938],
  ];
  test.each(PAIRS)("at %f and %f degrees leave %f", (first, second, left) => {
    const tolerance = left === 0 ? NOTHING_LEFT : SIX_DECIMALS;
    expect(Math.abs(equivalentDeg(crossJoints([0]), planarPoses([first, second])) - left)).toBeLessThan(tolerance);
  });
});

describe("a slip spline put together out of phase", () => {
  // Two equal joints in one plane, phase error in degrees; M6, derived and simulated.
  const ERRORS: readonly (readonly [number, readonly (readonly [number, number])[]])[] = [
    [
      3,
      [
        [1, 0.560609],
        [5, 1.252755],
        [22.5, 2.624699],
        [90, 4.241671],
      ],
    ],
    [
      5,
      [
        [2, 1.321758],
        [10, 2.947819],
        [45, 5.944474],
        [90, 7.066574],
      ],
    ],
    [
      8,
      [
        [1, 1.496992],
        [22.5, 7.001546],
        [45, 9.507269],
        [90, 11.295265],
      ],
    ],
  ];
  test.each(ERRORS)("with joints at %f degrees", (angle, rows) => {
    for (const [error, left] of rows) {
      expect(Math.abs(equivalentDeg(crossJoints([error]), planarPoses([angle, angle])) - left)).toBeLessThan(SIX_DECIMALS);
    }
  });
  test("with unequal joints", () => {
    expect(Math.abs(equivalentDeg(crossJoints([10]), planarPoses([5, 3])) - 4.103657)).toBeLessThan(LAST_DIGIT_CUT);
    expect(Math.abs(equivalentDeg(crossJoints([7.5]), planarPoses([6, 6])) - 3.067678)).toBeLessThan(LAST_DIGIT_CUT);
    expect(Math.abs(equivalentDeg(crossJoints([90]), planarPoses([4, 2])) - 4.471409)).toBeLessThan(LAST_DIGIT_CUT);
  });
});

describe("three joints in one plane", () => {
  // R1, R2, R6: parallel-parallel, crossed-parallel, parallel-crossed, crossed-crossed (phasing names: Meritor MM-96147 page 79; values derived and simulated).
  const TRIPLES: readonly (readonly [readonly number[], readonly number[]])[] = [
    [
      [3, 5, 4],
      [0.1211, 4.2434, 5.65585, 7.06554],
    ],
    [
      [1, 5, 4],
      [2.83116, 3.16445, 6.32166, 6.47728],
    ],
    [
      [4, 4, 4],
      [4, 4, 4, 6.92257],
    ],
  ];
  const PHASINGS = [
    [0, 0],
    [90, 0],
    [0, 90],
    [90, 90],
  ];
  test.each(TRIPLES)("%j leave %j", (angles, left) => {
    PHASINGS.forEach((phasing, k) => {
      expect(Math.abs(equivalentDeg(crossJoints(phasing), planarPoses(angles)) - (left[k] as number))).toBeLessThan(FIVE_DECIMALS);
    });
  });
  test("are where a sum of angles misleads: 3/5/4 sums to 2 and cancels, 1/5/4 sums to 0 and does not", () => {
    const signs = benchSigns(crossJoints([0, 0])) as readonly number[];
    expect(Math.abs(benchSum(signs, [3, 5, 4]))).toBe(2);
    expect(Math.abs(benchSum(signs, [1, 5, 4]))).toBe(0);
  });
});

describe("compound angles", () => {
  // C4, C6: cos b = sin E1 sin E2 + cos E1 cos E2 cos(H2 - H1); derived.
  test("come from true inclinations and plan headings", () => {
    expect(Math.abs((jointAngles([pose(3), pose(6, 2)])[0] as number) - 3.602006)).toBeLessThan(SIX_DECIMALS);
    expect(Math.abs((jointAngles([pose(15), pose(20, 10)])[0] as number) - 10.763905)).toBeLessThan(SIX_DECIMALS);
  });
  // C1: Spicer driveline installation manual, page 10: top view 2.15 and side view 2.50 give "3.3 degrees" by a root of squares; the manual prints one decimal.
  test("agree with the published root of squares to its one decimal", () => {
    expect(Math.abs((jointAngles([pose(0), pose(2.5, 2.15)])[0] as number) - 3.3)).toBeLessThan(0.05);
  });
});

describe("chains out of one plane", () => {
  // The reference counts inclination upward, which mirrors the picture: a phasing of 4 and -7 there is -4 and 7 here.
  // G1 to G11: (E, H) of transmission, shaft(s), axle; joint angles and what is left, all derived by M6 and checked by simulation.
  const CHAINS: readonly {
    readonly id: string;
    readonly poses: readonly (readonly [number, number])[];
    readonly phasing: readonly number[];
    readonly angles: readonly number[];
    readonly left: number;
  }[] = [
    {
      id: "G1",
      poses: [
        [3, 0],
        [5.5, 2.15],
        [3, 0],
      ],
      phasing: [0],
      angles: [3.293383, 3.293383],
      left: 0,
    },
    {
      id: "G2",
      poses: [
        [3, 0],
        [0, 0],
        [-3, 0],
      ],
      phasing: [0],
      angles: [3, 3],
      left: 0,
    },
    {
      id: "G3",
      poses: [
        [3, 0],
        [0, 3],
        [-3, 0],
      ],
      phasing: [0],
      angles: [4.241671, 4.241671],
      left: 5.995883,
    },
    {
      id: "G4",
      poses: [
        [3, 0],
        [0, 3],
        [-3, 0],
      ],
      phasing: [90],
      angles: [4.241671, 4.241671],
      left: 0.222246,
    },
    {
      id: "G5",
      poses: [
        [0, 0],
        [3, 1],
        [0, 2],
      ],
      phasing: [0],
      angles: [3.162133, 3.162133],
      left: 3.464541,
    },
    {
      id: "G8",
      poses: [
        [0, 0],
        [4, 0],
        [0, 1],
      ],
      phasing: [0],
      angles: [4, 4.122909],
      left: 2.84114,
    },
    {
      id: "G11",
      poses: [
        [3, 0],
        [1, 0.8],
        [6, 1.6],
        [2, 0],
      ],
      phasing: [0, 0],
      angles: [2.15387, 5.06332, 4.306564],
      left: 2.782864,
    },
    {
      id: "G11 crossed",
      poses: [
        [3, 0],
        [1, 0.8],
        [6, 1.6],
        [2, 0],
      ],
      phasing: [90, 0],
      angles: [2.15387, 5.06332, 4.306564],
      left: 4.047012,
    },
    {
      id: "G11 by teeth",
      poses: [
        [3, 0],
        [1, 0.8],
        [6, 1.6],
        [2, 0],
      ],
      phasing: [-4, 7],
      angles: [2.15387, 5.06332, 4.306564],
      left: 2.428641,
    },
  ];
  test.each(CHAINS)("$id", ({ poses, phasing, angles, left }) => {
    const lying = poses.map(([inclination, heading]) => pose(inclination, heading));
    jointAngles(lying).forEach((angle, k) => {
      expect(Math.abs(angle - (angles[k] as number))).toBeLessThan(SIX_DECIMALS);
    });
    expect(Math.abs(equivalentDeg(crossJoints(phasing), lying) - left)).toBeLessThan(left === 0 ? NOTHING_LEFT : SIX_DECIMALS);
  });
});

describe("a double cross joint that is not halved", () => {
  // Centring ball on one shaft, designed to be exact at 32 degrees: ball distance c / cos(16 degrees); residual at 10 and 20 degrees (model values derived from the law of sines, not published).
  test.each([
    [10, 1.91114],
    [20, 3.162162],
    [32, 0],
  ])("at %f degrees leaves %f", (angle, left) => {
    const centring = { crossesApart: metres(0.1), ballFromCross: metres(0.05 / cosDegrees(16)), ballFixedTo: "source-side" } as const;
    const driveline = { id: "front", joints: [{ id: "J1", kind: "double-cross", centring } as const], sections: [] };
    expect(Math.abs(equivalentDeg(driveline, [pose(0), pose(angle)]) - left)).toBeLessThan(left === 0 ? NOTHING_LEFT : SIX_DECIMALS);
  });
});

describe("the common-practice two-piece set", () => {
  // Common practice, no source: flange 2.4, shaft 5.6 / 5.6, second section 5.1 / 5.1, pinion 2.1 degrees, all falling toward the axle, front section phased a quarter turn.
  const lying = [pose(2.4), pose(5.6), pose(5.1), pose(2.1)];
  const driveline = crossJoints([90, 0]);
  /** One decimal in, so one decimal out; the sum itself is exact to rounding. */
  const ROUNDING = 1e-9;

  test("works at 3.2, 0.5 and 3.0 degrees and sums to 0.7, accepted up to 0.75", () => {
    const angles = chainState(driveline, lying).joints.map(({ alongU, alongV }) => radiansToDegrees(Math.hypot(alongU, alongV) as never));
    [3.2, 0.5, 3.0].forEach((published, k) => {
      expect(Math.abs((angles[k] as number) - published)).toBeLessThan(ROUNDING);
    });
    expect(nearlyPlanar(lying)).toBe(true);
    const residual = Math.abs(benchSum(benchSigns(driveline) as readonly number[], angles));
    expect(Math.abs(residual - 0.7)).toBeLessThan(ROUNDING);
    expect(residual).toBeLessThanOrEqual(0.75);
  });
});
