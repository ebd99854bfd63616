import { type Case, correctionBasis, parseChanges, predictionToJson, restore } from "@halfturn/casefile";
import { predict } from "@halfturn/engine/correction";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { degreesToRadians, radians, radiansToDegrees } from "@halfturn/engine/units";
import { expect, test } from "vitest";

// Every expected number here comes from plain trigonometry in vehicle directions (forward, left, up), written out in the test: nothing of the engine's
// geometry is called, and no chain frame appears. Case file in, printed contract out: so a sign turned round anywhere on the way shows.

type Runs = "rearward" | "forward";

/** Degrees: double rounding through sines of a few degrees, and of the readings' way through the fit. */
const ROUNDING = 1e-10;
const deg = (angle: number): number => radiansToDegrees(radians(angle));
const rad = degreesToRadians;

const FRONT = 1200;
const BACK = 1000;
const BEARING = 100;
const ARM = 300;
const PIVOT = { forward: 1400, up: 20 };
const MOUNT = { forward: 200, up: -150 };
/** First joint of the second driveline from that of the first. */
const SECOND = { forward: 150, up: -80 };
/** Inclinations: source, sections, pinion. */
const TWO_PIECE = [2, 3, 4, 1.5] as const;
const ONE_PIECE = [1, 3.5, 2] as const;

/** A shaft's reading; + = driven end lower, whichever way it runs. */
const reading = (at: string, inclination: number) => ({ at, deg: inclination, lower: "driven-end", side: "left" });
const straight = (of: string) => ({ of, deg: 0, accuracyDeg: 0.1 });
const gauge = { resolutionDeg: 0.1, accuracyDeg: 0.1, zeroCheck: [{ deg: 0 }, { deg: 0 }] };
const gauging = (driveline: string, shafts: readonly string[], inclinations: readonly number[]) => ({
  driveline,
  stage: "as-found",
  state: { rideHeight: "normal", wheels: "on-ground" },
  gauge,
  readings: shafts.map((shaft, k) => reading(shaft, inclinations[k] ?? 0)),
  headings: shafts.map(straight),
});

/** A driveline of two sections that runs one way and one of a single section that runs the other way. */
function vehicle(runs: Runs): Case {
  const section = (id: string, lengthMm: number, more = {}) => ({ id, lengthMm, phasingDeg: 0, phasingMeasured: true, ...more });
  const slip = { slip: { engagedMm: 80, minimumEngagedMm: 40, inwardTravelMm: 40 } };
  const axle = { centreToJointMm: ARM, springPosition: "above-axle" };
  const common = { label: "x", labour: 1 };
  const stock = { minMm: -20, maxMm: 20, stepMm: 1 };
  const document = {
    format: "halfturn-case",
    version: 1,
    id: "signs",
    title: "Signs",
    createdAt: "2026-01-05",
    vehicle: {
      maxShaftSpeedRpm: 3000,
      powertrain: { pivotForwardMm: PIVOT.forward, pivotUpMm: PIVOT.up, mountForwardMm: MOUNT.forward, mountUpMm: MOUNT.up },
    },
    drivelines: [
      {
        id: "main",
        runs,
        sections: [section("front", FRONT), section("back", BACK, slip)],
        joints: [
          { id: "J1", kind: "cross" },
          {
            id: "J2",
            kind: "cross",
            support: { bearingToJointMm: BEARING, bearingIs: "source-side", bearingMounted: "below-crossmember" },
          },
          { id: "J3", kind: "cross" },
        ],
        axle,
      },
      {
        id: "other",
        runs: runs === "rearward" ? "forward" : "rearward",
        firstJoint: { forwardMm: SECOND.forward, upMm: SECOND.up },
        sections: [section("shaft", BACK, slip)],
        joints: [
          { id: "K1", kind: "cross" },
          { id: "K2", kind: "cross" },
        ],
        axle,
      },
    ],
    gauging: [
      gauging("main", ["source", "front", "back", "driven"], TWO_PIECE),
      gauging("other", ["source", "shaft", "driven"], ONE_PIECE),
    ],
    adjusters: [
      { ...common, id: "shift", kind: "support-shift", driveline: "main", joint: "J2", stock },
      { ...common, id: "drop", kind: "support-drop", driveline: "main", joint: "J2", stock },
      { ...common, id: "mount", kind: "mount-spacer", stock },
      { ...common, id: "wedge", kind: "axle-wedge", driveline: "main", stock: { minDeg: -5, maxDeg: 5, stepDeg: 0.5 } },
    ],
  };
  const restored = restore(JSON.stringify(document));
  if (!restored.ok) throw new Error(JSON.stringify(restored.problems));
  return restored.case;
}

/** Inclination and heading of every shaft of a driveline after a change, as printed, degrees. */
function after(runs: Runs, change: string, id = "main"): { readonly inclination: readonly number[]; readonly heading: readonly number[] } {
  const basis = correctionBasis(vehicle(runs), { defaults: DEFAULT_LIMITS, draws: 100, seed: 1 });
  const changes = parseChanges([change], basis.input);
  if (!changes.ok) throw new Error(JSON.stringify(changes.problems));
  const predicted = predict(basis.input, changes.changes);
  if (!predicted.ok) throw new Error(JSON.stringify(predicted.reasons));
  const shafts = predictionToJson(predicted.value, basis).states[0]?.drivelines.find((one) => one.id === id)?.shafts ?? [];
  return {
    inclination: shafts.map(({ inclinationDeg }) => inclinationDeg?.value ?? Number.NaN),
    heading: shafts.map(({ headingDeg }) => headingDeg?.value ?? Number.NaN),
  };
}

const expectClose = (got: readonly number[], expected: readonly number[]): void => {
  expect(got).toHaveLength(expected.length);
  for (const [k, value] of got.entries()) expect(Math.abs(value - (expected[k] ?? Number.NaN))).toBeLessThan(ROUNDING);
};

/** A point in the vehicle's own words, millimetres. */
interface Point {
  readonly forward: number;
  readonly left: number;
  readonly up: number;
}
/** +1 forward or -1 rearward along the way the power flows. */
const way = (runs: Runs): number => (runs === "forward" ? 1 : -1);
const along = (from: Point, runs: Runs, length: number, inclination: number): Point => ({
  forward: from.forward + way(runs) * length * Math.cos(rad(inclination)),
  left: from.left,
  up: from.up - length * Math.sin(rad(inclination)),
});
/** How far the driven end lies below the source end, as an angle. */
const inclinationOf = (from: Point, to: Point): number =>
  deg(Math.atan2(from.up - to.up, Math.hypot(to.forward - from.forward, to.left - from.left)));
/** Toward the vehicle's left of the way the power flows, seen in the plan; + = left. */
const leftward = (from: Point, to: Point): number => deg(Math.atan2(to.left - from.left, Math.abs(to.forward - from.forward)));
/** The point at a fixed distance from `from` toward `to`. */
function toward(from: Point, to: Point, distance: number): Point {
  const span = Math.hypot(to.forward - from.forward, to.left - from.left, to.up - from.up);
  const step = (a: number, b: number): number => a + ((b - a) * distance) / span;
  return { forward: step(from.forward, to.forward), left: step(from.left, to.left), up: step(from.up, to.up) };
}
const ORIGIN: Point = { forward: 0, left: 0, up: 0 };

const BOTH: readonly Runs[] = ["rearward", "forward"];

test.each(BOTH)("%s: a bearing moved 5 mm to the vehicle's left takes its joint left by the lever, and both sections follow", (runs) => {
  const j2 = along(ORIGIN, runs, FRONT, TWO_PIECE[1]);
  const j3 = along(j2, runs, BACK, TWO_PIECE[2]);
  const held = { ...j2, left: (5 * FRONT) / (FRONT - BEARING) };
  const moved = toward(ORIGIN, held, FRONT);
  const { inclination, heading } = after(runs, "shift=5mm");
  expectClose(inclination, [TWO_PIECE[0], inclinationOf(ORIGIN, held), inclinationOf(moved, j3), TWO_PIECE[3]]);
  // A heading counts positive toward the left of a shaft that runs forward and toward the right of one that runs rearward (agreed design, section 4).
  const sign = way(runs);
  expectClose(heading, [0, sign * leftward(ORIGIN, held), sign * leftward(moved, j3), 0]);
  expect(Math.sign(heading[1] ?? 0)).toBe(runs === "forward" ? 1 : -1);
  expect(Math.sign(heading[2] ?? 0)).toBe(runs === "forward" ? -1 : 1);
});

test.each(BOTH)("%s: a bearing lowered by 9 mm lowers its joint by the lever: the front section falls more, the back less", (runs) => {
  const j2 = along(ORIGIN, runs, FRONT, TWO_PIECE[1]);
  const j3 = along(j2, runs, BACK, TWO_PIECE[2]);
  const held = { ...j2, up: j2.up - (9 * FRONT) / (FRONT - BEARING) };
  const moved = toward(ORIGIN, held, FRONT);
  const { inclination } = after(runs, "drop=9mm");
  expectClose(inclination, [TWO_PIECE[0], inclinationOf(ORIGIN, held), inclinationOf(moved, j3), TWO_PIECE[3]]);
  expect(inclination[1]).toBeGreaterThan(TWO_PIECE[1]);
  expect(inclination[2]).toBeLessThan(TWO_PIECE[2]);
});

/** The powertrain after its mount was raised: the turn from forward to up, and where it takes a point. The mount lies behind the pivot. */
function powertrain(spacer: number): { readonly turn: number; readonly carry: (point: Point) => Point } {
  const behind = PIVOT.forward - MOUNT.forward;
  const below = PIVOT.up - MOUNT.up;
  const reach = Math.hypot(behind, below);
  // Angle of the mount below the level line through the pivot, before and after; raising it makes that angle smaller.
  const turn = Math.asin((below - spacer) / reach) - Math.asin(below / reach);
  const carry = ({ forward, left, up }: Point): Point => {
    const x = forward - PIVOT.forward;
    const z = up - PIVOT.up;
    return {
      forward: PIVOT.forward + x * Math.cos(turn) - z * Math.sin(turn),
      left,
      up: PIVOT.up + x * Math.sin(turn) + z * Math.cos(turn),
    };
  };
  return { turn, carry };
}

test.each(BOTH)(
  "%s: a spacer of 8 mm raises the rear of the powertrain: the source falls less toward the rear, more toward the front",
  (runs) => {
    const { turn, carry } = powertrain(8);
    // The mount itself rises by the spacer, and what lies behind the pivot rises with it.
    expect(Math.abs(carry({ ...MOUNT, left: 0 }).up - MOUNT.up - 8)).toBeLessThan(ROUNDING);
    expect(carry(ORIGIN).up).toBeGreaterThan(0);
    const j1 = carry(ORIGIN);
    const j2 = along(ORIGIN, runs, FRONT, TWO_PIECE[1]);
    const j3 = along(j2, runs, BACK, TWO_PIECE[2]);
    // The bearing holds the shaft on the line from the first joint: the joint beyond it sinks by the lever while the first one rises.
    const lever = BEARING / (FRONT - BEARING);
    const held = { ...j2, forward: j2.forward - lever * j1.forward, up: j2.up - lever * j1.up };
    const moved = toward(j1, held, FRONT);
    const { inclination, heading } = after(runs, "mount=8mm");
    const source = runs === "rearward" ? TWO_PIECE[0] + deg(turn) : TWO_PIECE[0] - deg(turn);
    expectClose(inclination, [source, inclinationOf(j1, held), inclinationOf(moved, j3), TWO_PIECE[3]]);
    expectClose(heading, [0, 0, 0, 0]);
    expect(Math.sign((inclination[0] ?? 0) - TWO_PIECE[0])).toBe(runs === "rearward" ? -1 : 1);
  },
);

test.each(BOTH)("%s: the same spacer carries the first joint of the other driveline along from where it lies", (runs) => {
  const other: Runs = runs === "rearward" ? "forward" : "rearward";
  const { turn, carry } = powertrain(8);
  const k1 = { forward: SECOND.forward, left: 0, up: SECOND.up };
  const k2 = along(k1, other, BACK, ONE_PIECE[1]);
  const { inclination } = after(runs, "mount=8mm", "other");
  const source = other === "rearward" ? ONE_PIECE[0] + deg(turn) : ONE_PIECE[0] - deg(turn);
  expectClose(inclination, [source, inclinationOf(carry(k1), k2), ONE_PIECE[2]]);
  expect(inclination[1]).toBeGreaterThan(ONE_PIECE[1]);
});

test.each(BOTH)("%s: a wedge of 2 degrees nose up turns the pinion, and lifts the last joint about the axle's centre", (runs) => {
  const j2 = along(ORIGIN, runs, FRONT, TWO_PIECE[1]);
  const j3 = along(j2, runs, BACK, TWO_PIECE[2]);
  const centre = along(j3, runs, ARM, TWO_PIECE[3]);
  const nose = along(centre, runs, -ARM, TWO_PIECE[3] + 2);
  const { inclination } = after(runs, "wedge=2deg");
  // The pad sinks by the wedge's mean thickness as well; only what is plain is held here to the last digit.
  expectClose([inclination[0] ?? 0, inclination[1] ?? 0, inclination[3] ?? 0], [TWO_PIECE[0], TWO_PIECE[1], TWO_PIECE[3] + 2]);
  expect(nose.up).toBeGreaterThan(j3.up);
  expect(inclination[2]).toBeLessThan(TWO_PIECE[2]);
});
