import type { JointKind } from "@halfturn/engine/kinematics";
import type { Metres } from "@halfturn/engine/units";
import fc from "fast-check";
import type { Sample } from "./sample-drivelines.test-support.js";

const angle = (most: number) => fc.oneof(fc.double({ min: -most, max: most, noNaN: true }), fc.constant(0), fc.constant(3));
const name = fc.oneof(
  fc.constantFrom(
    "Source",
    "Front section",
    "Transfer case output to the rear axle",
    "Hinterachse, Differentialeingang",
    "Überlängenzwischenwellenabschnitt",
    "中间轴段",
    "W".repeat(60),
  ),
  fc.string({ unit: "grapheme", maxLength: 40 }),
);

/** One to six joints of any kind, with and without lengths, unknowns of every sort, long and odd names. */
export const samples: fc.Arbitrary<Sample> = fc.integer({ min: 1, max: 6 }).chain((n) =>
  fc
    .record({
      kinds: fc.array(fc.constantFrom<JointKind>("cross", "cross", "double-cross", "ball", "flexible"), { minLength: n, maxLength: n }),
      shafts: fc.array(
        fc.record({
          inclinationDeg: fc.oneof({ weight: 8, arbitrary: angle(14) }, { weight: 1, arbitrary: fc.constant(null) }),
          headingDeg: angle(6),
        }),
        {
          minLength: n + 1,
          maxLength: n + 1,
        },
      ),
      lengthsM: fc.option(fc.array(fc.double({ min: 0.05, max: 2.5, noNaN: true }), { minLength: n - 1, maxLength: n - 1 }), { nil: [] }),
      phasingsDeg: fc.array(fc.oneof(fc.double({ min: -180, max: 180, noNaN: true }), fc.constantFrom(0, 90, null)), {
        minLength: n - 1,
        maxLength: n - 1,
      }),
      names: fc.array(name, { minLength: n + 1, maxLength: n + 1 }),
      long: fc.boolean(),
      supported: fc.subarray(Array.from({ length: n }, (_, k) => k)),
      bearing: fc.option(fc.double({ min: 0, max: 0.6, noNaN: true }), { nil: null }),
      side: fc.constantFrom("source-side" as const, "driven-side" as const),
      centreToJoint: fc.option(fc.double({ min: 0.1, max: 0.6, noNaN: true }), { nil: null }),
      hasAxle: fc.boolean(),
      measured: fc.subarray(Array.from({ length: n + 1 }, (_, k) => k)),
      runs: fc.constantFrom("rearward" as const, "forward" as const),
      withheld: fc.boolean(),
      maxRpm: fc.integer({ min: 600, max: 6000 }),
    })
    .map(({ long, supported, bearing, side, centreToJoint, hasAxle, ...rest }) => {
      const jointIds = rest.kinds.map((_, k) => (long ? `joint-number-${k + 1}-of-the-line` : `J${k + 1}`));
      return {
        ...rest,
        jointIds,
        supports: supported.map((k) => ({ joint: jointIds[k] as string, bearingIs: side, bearingToJoint: bearing as Metres | null })),
        axle: hasAxle ? { centreToJoint: centreToJoint as Metres | null, jointAboveCentre: null } : null,
      };
    }),
);
