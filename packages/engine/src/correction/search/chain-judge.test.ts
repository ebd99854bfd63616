import fc from "fast-check";
import { expect, test } from "vitest";
import { directionOf, poseOf, vec3 } from "../../geometry/index.js";
import {
  chainState,
  type Driveline,
  equivalentAngle,
  peakAccelerationCoefficient,
  unevennessOf,
  wholeChain,
} from "../../kinematics/index.js";
import type { Radians } from "../../units/index.js";
import * as c from "../correction-cases.test-support.js";
import { moveSize, phasingsAt } from "../geometry/move-layout.js";
import { exactly, exceeds, limitUses, marginOf, slackFor } from "./chain-judge.js";
import { type ChainLimits, chainLimits } from "./chain-limits.js";
import { newChainScratch } from "./chain-scratch.js";

/** Angles by the flat and the readable way differ by rounding only; near zero an equivalent angle is the root of a difference of 1e-17. */
const ROUNDING = 1e-8;

const angle = fc.double({ min: -9, max: 9, noNaN: true });
const kinds = ["cross", "double-cross", "ball"] as const;
const arbitraryChain = fc
  .record({
    n: fc.integer({ min: 1, max: 5 }),
    poses: fc.array(fc.tuple(angle, angle), { minLength: 6, maxLength: 6 }),
    phasings: fc.array(fc.double({ min: -90, max: 90, noNaN: true }), { minLength: 5, maxLength: 5 }),
    kind: fc.array(fc.integer({ min: 0, max: 5 }), { minLength: 5, maxLength: 5 }),
    centred: fc.boolean(),
  })
  .map(({ n, poses, phasings, kind, centred }) => {
    const plain = c.chain(
      Array.from({ length: n - 1 }, () => 1000),
      phasings,
    );
    const joints = plain.joints.map((joint, k) => {
      const chosen = kinds[kind[k] as number] ?? "cross";
      const centring = { crossesApart: c.mm(100), ballFromCross: c.mm(52), ballFixedTo: "source-side" } as const;
      return { ...joint, kind: chosen, ...(chosen === "double-cross" && centred ? { centring } : {}) };
    });
    const driveline: Driveline = { ...plain, joints };
    return { driveline, poses: poses.slice(0, n + 1) };
  });

function flat(driveline: Driveline, posesDeg: readonly (readonly [number, number])[]) {
  const n = driveline.joints.length;
  const directions = Float64Array.from(
    posesDeg.flatMap(([i, h]) => {
      const d = directionOf({ inclination: c.deg(i), heading: c.deg(h) });
      return [d.x, d.y, d.z];
    }),
  );
  const move = new Float64Array(moveSize(n));
  driveline.sections.forEach(({ phasing }, k) => {
    move[phasingsAt(n) + 2 * k] = Math.cos(phasing ?? 0);
    move[phasingsAt(n) + 2 * k + 1] = Math.sin(phasing ?? 0);
  });
  const input = c.drivelineCase(
    driveline,
    c.poseModel(
      driveline,
      posesDeg.map(([i]) => i),
    ),
  );
  return { n, directions, move, limits: chainLimits(input, "none"), scratch: newChainScratch(n) };
}

test("the flat chain gives the numbers of the readable one", () => {
  fc.assert(
    fc.property(arbitraryChain, ({ driveline, poses }) => {
      const { directions, move, limits, scratch } = flat(driveline, poses);
      const state = chainState(
        driveline,
        poses.map(([i, h]) => ({ inclination: c.deg(i), heading: c.deg(h) })),
      );
      const names = { driveline: "whole", sections: driveline.sections.map(({ id }) => id) };
      const uses = limitUses(limits, directions, move, scratch, names);
      const value = (limit: string, of: string) => uses.find((use) => use.limit === limit && use.of === of)?.value ?? Number.NaN;
      state.joints.forEach(({ alongU, alongV }, k) => {
        expect(Math.abs(value("joint-over", driveline.joints[k]?.id ?? "") - Math.hypot(alongU, alongV))).toBeLessThan(ROUNDING);
      });
      expect(Math.abs(value("equivalent-angle", "whole") - equivalentAngle(unevennessOf(wholeChain(state))))).toBeLessThan(ROUNDING);
      driveline.sections.forEach(({ id }, k) => {
        for (const [limit, map] of [
          ["inertia-drive", state.fromSource[k]],
          ["inertia-coast", state.toDriven[k + 1]],
        ] as const) {
          const expected = map ? peakAccelerationCoefficient(unevennessOf(map)) * limits.speed ** 2 : Number.NaN;
          expect(Math.abs(value(limit, id) - expected) / limits.speed ** 2).toBeLessThan(ROUNDING);
        }
      });
      expect(Math.abs(marginOf(limits, directions, move, scratch) - Math.min(...uses.map(({ margin }) => margin)))).toBeLessThan(ROUNDING);
    }),
    { numRuns: 300, seed: 11 },
  );
});

test("a negative margin and a failed test are the same thing", () => {
  fc.assert(
    fc.property(arbitraryChain, ({ driveline, poses }) => {
      const { n, directions, move, limits, scratch } = flat(driveline, poses);
      const margin = marginOf(limits, directions, move, scratch);
      // Exactly on a limit the two may round either way.
      if (Math.abs(margin) > ROUNDING) expect(exceeds(limits, directions, move, exactly(n), scratch)).toBe(margin < 0);
    }),
    { numRuns: 300, seed: 12 },
  );
});

/** Limits that only the map can break: no joint's own, so that the bound on the chain is what is tested. */
const chainOnly = (limits: ChainLimits, uneven: number): ChainLimits => ({
  ...limits,
  maximum: limits.maximum.map(() => Math.PI),
  minimum: limits.minimum.map(() => 0),
  unevenWhole: uneven,
  unevenDrive: uneven,
  unevenCoast: uneven,
});

test("what certainly fails within a slack fails at every chain within it", () => {
  let certain = 0;
  fc.assert(
    fc.property(
      arbitraryChain,
      fc.array(fc.tuple(fc.double({ min: 0, max: 1.5, noNaN: true }), fc.double({ min: 0, max: 6.3, noNaN: true })), {
        minLength: 6,
        maxLength: 6,
      }),
      fc.double({ min: 0, max: 0.999, noNaN: true }),
      fc.boolean(),
      ({ driveline, poses }, moves, share, mapOnly) => {
        const { n, directions, move, limits: all, scratch } = flat(driveline, poses);
        // A limit just below what this chain has: the hardest case for the bound.
        const state = chainState(
          driveline,
          poses.map(([i, h]) => ({ inclination: c.deg(i), heading: c.deg(h) })),
        );
        const limits = mapOnly ? chainOnly(all, share * unevennessOf(wholeChain(state))) : all;
        const turns = moves.slice(0, n + 1).map(([size]) => c.deg(size));
        if (!exceeds(limits, directions, move, slackFor(turns, limits), scratch)) return;
        certain++;
        // Every shaft turned by its whole slack, each in its own direction.
        const turned = Float64Array.from(
          turns.flatMap((turn, s) => {
            const d = vec3(directions[3 * s] as number, directions[3 * s + 1] as number, directions[3 * s + 2] as number);
            const { inclination, heading } = poseOf(d);
            const up = vec3(Math.sin(inclination) * Math.cos(heading), Math.sin(inclination) * Math.sin(heading), Math.cos(inclination));
            const side = vec3(-Math.sin(heading), Math.cos(heading), 0);
            const way = moves[s]?.[1] ?? 0;
            const along = (key: "x" | "y" | "z") =>
              d[key] * Math.cos(turn) + Math.sin(turn) * (up[key] * Math.cos(way) + side[key] * Math.sin(way));
            return [along("x"), along("y"), along("z")];
          }),
        );
        expect(exceeds(limits, turned, move, exactly(n), scratch)).toBe(true);
      },
    ),
    { numRuns: 4000, seed: 13 },
  );
  // The bound has to be worth something: a good part of these chains must have been certain.
  expect(certain).toBeGreaterThan(400);
});

test("the whole chain in line keeps every upper limit and breaks the lower one of its joints", () => {
  const driveline = c.chain([1000, 1000], [90, 0]);
  const { directions, move, limits, scratch } = flat(driveline, [
    [0, 0],
    [0, 0],
    [0, 0],
    [0, 0],
  ]);
  const uses = limitUses(limits, directions, move, scratch, { driveline: "rear", sections: ["s1", "s2"] });
  expect(uses.filter(({ margin }) => margin < 0).map(({ limit, of }) => `${limit} ${of}`)).toEqual([
    "joint-under J1",
    "joint-under J2",
    "joint-under J3",
  ]);
  expect(uses.every(({ value }) => value === (0 as Radians))).toBe(true);
});
