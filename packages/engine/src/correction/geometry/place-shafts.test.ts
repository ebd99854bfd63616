import fc from "fast-check";
import { expect, test } from "vitest";
import { type Radians, radiansToDegrees } from "../../units/index.js";
import * as c from "../correction-cases.test-support.js";
import type { CorrectionDriveline, CorrectionInput } from "../model/index.js";
import { correctionModel } from "./correction-model.js";
import { bestRecords } from "./draw-records.js";
import { newPlacement, PLACED, placeShafts, SPACER_OUT_OF_REACH } from "./place-shafts.js";
import { newMoves, writeMoves } from "./write-moves.js";

/** Two formulations in doubles of lengths near 3 m differ by some tens of roundings. */
const ROUNDING = 1e-12;

type V = readonly [number, number, number];
type M = readonly [V, V, V];

// An independent rigid body in the vehicle frame (X forward, Y left, Z up): points and rotation matrices, nothing shared with the engine.
const add = (a: V, b: V): V => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const sub = (a: V, b: V): V => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const times = (a: V, f: number): V => [a[0] * f, a[1] * f, a[2] * f];
const norm = (a: V): number => Math.sqrt(a[0] ** 2 + a[1] ** 2 + a[2] ** 2);
const row = (m: V, v: V): number => m[0] * v[0] + m[1] * v[1] + m[2] * v[2];
const turned = (m: M, v: V): V => [row(m[0], v), row(m[1], v), row(m[2], v)];
/** Rotation matrix about a unit axis by an angle: I + sin K + (1 - cos) K K. */
const rotation = ([x, y, z]: V, angle: number): M => {
  const s = Math.sin(angle);
  const k = 1 - Math.cos(angle);
  return [
    [1 - k * (y * y + z * z), k * x * y - s * z, k * x * z + s * y],
    [k * x * y + s * z, 1 - k * (x * x + z * z), k * y * z - s * x],
    [k * x * z - s * y, k * y * z + s * x, 1 - k * (x * x + y * y)],
  ];
};
const inVehicle = (v: V, sign: number): V => [sign * v[0], sign * v[1], v[2]];

function placed(input: CorrectionInput, changes: Readonly<Record<string, number>>, d = 0, s = 0) {
  const model = correctionModel(input);
  const moves = newMoves(model);
  writeMoves(
    model,
    Float64Array.from(model.adjusters, ({ adjuster }) => changes[adjuster.id] ?? 0),
    moves,
  );
  const { topology } = model.drivelines[d] as (typeof model.drivelines)[number];
  const out = newPlacement(topology.joints);
  const code = placeShafts(topology, bestRecords(model)[d] as Float64Array, 0, moves[d]?.[s] as Float64Array, s, out);
  const triple = (from: Float64Array, k: number): V => [from[3 * k] as number, from[3 * k + 1] as number, from[3 * k + 2] as number];
  return {
    code,
    slip: out.slip[0] as number,
    directions: Array.from({ length: topology.joints + 1 }, (_, k) => triple(out.directions, k)),
    centres: Array.from({ length: topology.joints }, (_, k) => triple(out.centres, k)),
    inclinationDeg: Array.from({ length: topology.joints + 1 }, (_, k) =>
      radiansToDegrees(Math.asin(-(out.directions[3 * k + 2] as number)) as Radians),
    ),
  };
}

/** The same rounding, of angles turned into degrees by an arc sine. */
const DEGREES = 1e-11;
const farthest = (a: readonly number[], b: readonly number[]): number =>
  Math.max(...a.map((value, k) => Math.abs(value - (b[k] as number))));
const near = (a: V, b: V, within = ROUNDING): void => expect(norm(sub(a, b))).toBeLessThan(within);

const oneSection = (inclination: readonly number[], over: Partial<CorrectionDriveline> = {}) => {
  const driveline = c.chain([1000], [0]);
  return c.drivelineCase(driveline, c.poseModel(driveline, inclination), over);
};
const anyStock = c.rangeDeg(-6, 6, 0.5);
const anyMm = c.rangeMm(-60, 60, 1);

test("a wedge on a level shaft, by hand", () => {
  // Shaft and pinion level, L = 1000, arm 330, pad 100, thin edge 2, spring above the axle, wedge 3 degrees nose up.
  // tan 3 = 0.0524078, mean thickness 2 + 50 x 0.0524078 = 4.620389 mm, so the axle centre goes down 4.620389 mm.
  // The joint rises about the centre: 330 sin 3 = 17.270865 mm, and comes rearward by 330 (1 - cos 3) = 0.452254 mm.
  // P2 = (1000 + 0.452254, 0, 17.270866 - 4.620389) = (1000.452254, 0, 12.650477): shaft inclination -atan(12.650477/1000.452254) = -0.724453 degrees.
  const input = c.correctionCase([oneSection([0, 0, 0])], [c.wedge("w", anyStock)]);
  const { centres, inclinationDeg, slip } = placed(input, { w: c.deg(3) });
  near(centres[1] as V, [1.000452254, 0, 0.012650477], 1e-9);
  expect(Math.abs((inclinationDeg[1] as number) + 0.724453)).toBeLessThan(1e-6);
  expect(Math.abs((inclinationDeg[2] as number) - 3)).toBeLessThan(ROUNDING * 100);
  // Length sqrt(1000.452254^2 + 12.650477^2) = 1000.532231.
  expect(Math.abs(slip - 0.000532231)).toBeLessThan(1e-8);
});

test("a support drop on level shafts, by hand", () => {
  // Front section 1200, bearing 120 before its joint: lever 1200/1080. A drop of 9 mm at the bearing: the section runs through (1080, -9).
  // Direction (1080, -9)/1080.037499; joint at 1200 along it: z = -1200 x 9/1080.037499 = -9.999653, x = 1199.958336.
  const driveline = c.chain([1200, 1000], [90, 0]);
  const on = c.drivelineCase(driveline, c.poseModel(driveline, [0, 0, 0, 0]), {
    supports: [{ jointId: "J2", bearingToJoint: c.mm(120), bearingIs: "source-side", mounted: "below-crossmember" }],
    slips: [{ sectionId: "s2", engaged: null, minimumEngaged: null, inwardTravel: null }],
  });
  const { centres, inclinationDeg, slip } = placed(c.correctionCase([on], [c.supportDrop("d", anyMm)]), { d: 0.009 });
  near(centres[1] as V, [1.199958336, 0, -0.009999653], 1e-9);
  expect(Math.abs((inclinationDeg[1] as number) - 0.477454)).toBeLessThan(1e-6);
  // Back section: from there to (2200, 0): z rises 9.999653 over 1000.041664, length 1000.091658.
  expect(Math.abs((inclinationDeg[2] as number) + 0.572895)).toBeLessThan(1e-6);
  expect(Math.abs(slip - 0.000091658)).toBeLessThan(1e-8);
});

test("a mount spacer, by hand", () => {
  // Pivot 1350 forward of the joint and 60 below it, mount 1100 behind the pivot and 120 below: reach sqrt(1100^2 + 120^2) = 1106.526095.
  // Raised by 12: below the pivot by 108; angle from asin(120/1106.526095) = 6.225829 to asin(108/1106.526095) = 5.601143: turn 0.624686 degrees.
  const input = c.correctionCase([oneSection([3, 3, 3])], [c.mountSpacer("m", anyMm)]);
  const { inclinationDeg } = placed(input, { m: 0.012 });
  expect(Math.abs((inclinationDeg[0] as number) - (3 - 0.624686))).toBeLessThan(1e-6);
});

test("the engine agrees with points and rotation matrices in the vehicle frame", () => {
  // Thousandths, so that no amount is a wedge of no angle.
  const angle = fc.integer({ min: -8000, max: 8000 }).map((thousandths) => thousandths / 1000);
  fc.assert(
    fc.property(
      fc.tuple(angle, angle, angle, angle),
      fc.tuple(angle, angle, angle, angle),
      fc.record({ w: angle, d: angle, h: angle, m: angle, above: angle, runs: fc.boolean(), below: fc.boolean() }),
      (inclination, heading, { w, d, h, m, above, runs, below }) => {
        const sign = runs ? 1 : -1;
        const driveline = c.chain([1180, 1240], [90, 0]);
        const on = c.drivelineCase(driveline, c.poseModel(driveline, inclination, { headingDeg: heading }), {
          runs: runs ? "forward" : "rearward",
          supports: [{ jointId: "J2", bearingToJoint: c.mm(120), bearingIs: "source-side", mounted: null }],
          slips: [{ sectionId: "s2", engaged: null, minimumEngaged: null, inwardTravel: null }],
          axle: c.axle({ jointAboveCentre: c.mm(4 * above), springPosition: below ? "below-axle" : "above-axle" }),
        });
        const adjusters = [c.wedge("w", anyStock), c.supportDrop("d", anyMm), c.supportShift("h", anyMm), c.mountSpacer("m", anyMm)];
        const got = placed(c.correctionCase([on], adjusters), { w: c.deg(w / 2), d: (3 * d) / 1000, h: (2 * h) / 1000, m: (2 * m) / 1000 });

        // Everything again, as seen by somebody beside the vehicle.
        const shaft = (k: number): V => {
          const i = c.deg(inclination[k] as number);
          const g = c.deg(heading[k] as number);
          return inVehicle([Math.cos(i) * Math.cos(g), Math.cos(i) * Math.sin(g), -Math.sin(i)], sign);
        };
        const p1: V = [0, 0, 0];
        const p2 = times(shaft(1), 1.18);
        const p3 = add(p2, times(shaft(2), 1.24));
        // Powertrain: turn about the lateral axis found by bisection on the mount's height, not by a formula.
        const pivot: V = [1.35, 0, -0.06];
        const mount: V = sub([0.25, 0, -0.18], pivot);
        const height = (turn: number): number => turned(rotation([0, 1, 0], turn), mount)[2] - mount[2] - (2 * m) / 1000;
        let low = -0.2;
        let high = 0.2;
        for (let k = 0; k < 200; k++) {
          const middle = (low + high) / 2;
          if (Math.sign(height(middle)) === Math.sign(height(low))) low = middle;
          else high = middle;
        }
        const turn = rotation([0, 1, 0], low);
        const q1 = add(pivot, turned(turn, sub(p1, pivot)));
        // Axle: centre from the pinion's own axes, turned as a body about the lateral axis of the pinion.
        const i3 = c.deg(inclination[3] as number);
        const g3 = c.deg(heading[3] as number);
        const up = inVehicle([Math.sin(i3) * Math.cos(g3), Math.sin(i3) * Math.sin(g3), Math.cos(i3)], sign);
        const lateral = inVehicle([-Math.sin(g3), Math.cos(g3), 0], sign);
        const centre = sub(add(p3, times(shaft(3), 0.33)), times(up, (4 * above) / 1000));
        const body = rotation(lateral, c.deg(w / 2));
        const thick = w === 0 ? 0 : 0.002 + 0.05 * Math.tan(Math.abs(c.deg(w / 2)));
        const q3 = add(add(centre, turned(body, sub(p3, centre))), [0, 0, below ? thick : -thick]);
        // Support: the bearing on the front section, moved down and to the left; the section runs through it at its own length.
        const bearing = add(sub(p2, times(shaft(1), 0.12)), [0, (2 * h) / 1000, (-3 * d) / 1000]);
        // The moved joint's target is drawn out from the moved first joint by L / (L - b).
        const target = add(q1, times(sub(bearing, q1), 1.18 / 1.06));
        const front = times(sub(target, q1), 1 / norm(sub(target, q1)));
        const q2 = add(q1, times(front, 1.18));
        const back = sub(q3, q2);

        expect(got.code).toBe(PLACED);
        near(inVehicle(got.centres[0] as V, sign), q1);
        near(inVehicle(got.centres[1] as V, sign), q2);
        near(inVehicle(got.centres[2] as V, sign), q3);
        near(inVehicle(got.directions[0] as V, sign), turned(turn, shaft(0)));
        near(inVehicle(got.directions[1] as V, sign), front);
        near(inVehicle(got.directions[2] as V, sign), times(back, 1 / norm(back)));
        near(inVehicle(got.directions[3] as V, sign), turned(body, shaft(3)));
        expect(Math.abs(got.slip - (norm(back) - 1.24))).toBeLessThan(ROUNDING);
        // A turned axle keeps its arm: the joint stays at its distance from the moved centre.
        const moved = add(centre, [0, 0, below ? thick : -thick]);
        expect(Math.abs(norm(sub(inVehicle(got.centres[2] as V, sign), moved)) - Math.hypot(0.33, (4 * above) / 1000))).toBeLessThan(
          ROUNDING,
        );
      },
    ),
    { numRuns: 200, seed: 3 },
  );
});

test("nothing done leaves what was gauged", () => {
  const { directions, slip, inclinationDeg } = placed(c.correctionCase([c.twoPiece([4, 3, 4.5, 1.5])], []), {});
  expect(directions.every((direction) => Math.abs(norm(direction) - 1) < ROUNDING)).toBe(true);
  expect(farthest(inclinationDeg, [4, 3, 4.5, 1.5])).toBeLessThan(DEGREES);
  expect(Math.abs(slip)).toBeLessThan(ROUNDING);
});

test("nose up raises the inclination on either axle; the powertrain's rear raised lowers it at the rear shaft and raises it at the front one", () => {
  for (const runs of ["rearward", "forward"] as const) {
    const input = c.correctionCase([oneSection([2, 2, 2], { runs })], [c.wedge("w", anyStock), c.mountSpacer("m", anyMm)]);
    expect(placed(input, { w: c.deg(1) }).inclinationDeg[2]).toBeGreaterThan(2);
    const source = placed(input, { m: 0.006 }).inclinationDeg[0] as number;
    expect(source < 2).toBe(runs === "rearward");
    // The first joint goes up behind the pivot whichever way the shaft runs.
    expect((placed(input, { m: 0.006 }).centres[0] as V)[2]).toBeGreaterThan(0);
  }
});

test("drive torque lifts a rear pinion's nose and presses a front one's down; overrun reverses both", () => {
  const windUp = { drive: c.deg(1), coast: c.deg(0.5) };
  const states = [c.state("pull", { load: "drive-torque" }), c.state("overrun", { load: "coast-torque" })];
  const pinion = (runs: "rearward" | "forward", s: number): number =>
    placed(c.correctionCase([oneSection([2, 2, 2], { runs, axle: c.axle({ windUp }) })], [], { states }), {}, 0, s)
      .inclinationDeg[2] as number;
  expect(
    [pinion("rearward", 0), pinion("rearward", 1), pinion("forward", 0), pinion("forward", 1)].map((v) => Math.round(v * 1e9) / 1e9),
  ).toEqual([3, 1.5, 1, 2.5]);
});

test("a body lowered over its axle lifts the axle centre, seen from the body", () => {
  const states = [c.state("laden", { axleTravel: c.mm(-40), pinionPitch: c.deg(0.6) })];
  const { centres, inclinationDeg } = placed(c.correctionCase([oneSection([0, 0, 0])], [], { states }), {});
  // 40 mm up, and 330 sin 0.6 = 3.455689 mm by the pitch.
  expect(Math.abs((centres[1] as V)[2] - 0.043455689)).toBeLessThan(1e-9);
  expect(Math.abs((inclinationDeg[2] as number) - 0.6)).toBeLessThan(1e-10);
});

test("a spacer beyond the powertrain's reach is a reason, and without lengths only the turned parts turn", () => {
  expect(placed(c.correctionCase([oneSection([1, 1, 1])], [c.mountSpacer("m", anyMm)]), { m: 2 }).code).toBe(SPACER_OUT_OF_REACH);
  const driveline = c.chain([undefined], [0]);
  const bare = c.drivelineCase(driveline, c.poseModel(driveline, [1, 2, 3]));
  const { inclinationDeg } = placed(c.correctionCase([bare], [c.wedge("w", anyStock)]), { w: c.deg(1.5) });
  expect(farthest(inclinationDeg, [1, 2, 4.5])).toBeLessThan(DEGREES);
});
