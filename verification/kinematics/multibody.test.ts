import { type ArmMap, chainState, reverse } from "@halfturn/engine/kinematics";
import { uniformDeviates } from "@halfturn/engine/uncertainty";
import type { MainModule } from "mujoco-js";
import { beforeAll, describe, expect, test } from "vitest";
import { armsAtRest, type HeldEnd, loadMultibody, type MultibodyChain, settledTurns } from "./multibody-chain.js";
import { lateral, type RandomChain, randomChain } from "./random-chain.js";
import { turnAbout, turned, type Vector } from "./vectors.js";

/** Radians. What is left of the bodies' way to where the constraints want them (3e-13 at worst) and rounding, on any machine. */
const SETTLED_WITHIN = 1e-11;
/** A wrong convention must stand out in every chain, even where a phasing happens to lie near 0: by millions of times the tolerance. */
const PLAINLY_WRONG = 5e-4;
const SEED = 20260214;
/** Every five degrees over one turn; small enough for the bodies to follow. */
const ANGLES = Array.from({ length: 73 }, (_, step) => (2 * Math.PI * step) / 72);

let mujoco: MainModule;
beforeAll(async () => {
  mujoco = await loadMultibody();
});

const uniform = uniformDeviates(SEED);
const CHAINS: readonly (RandomChain & MultibodyChain)[] = Array.from({ length: 14 }, (_, k) => {
  // Joints of 3 to 15 degrees; the last two chains work at up to 30.
  const chain = randomChain(2 + (k % 2), k < 12 ? 3 : 15, k < 12 ? 15 : 30, uniform);
  const source = chain.directions[0] as Vector;
  return { ...chain, sourceArm: turned(lateral(source), source, 2 * Math.PI * uniform()) };
});

/** Where an arm map puts the arm that starts at `angle` from its shaft's level direction. */
const carried = ({ pRe, pIm, qRe, qIm }: ArmMap, angle: number): number => {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return Math.atan2((pIm + qIm) * c + (pRe - qRe) * s, (pRe + qRe) * c + (qIm - pIm) * s);
};

const wrapped = (angle: number): number => Math.atan2(Math.sin(angle), Math.cos(angle));

/** Largest difference between the turns that the maps give to shafts 0 to n and those of the bodies, radians, over one turn. */
function worst(maps: readonly (ArmMap | null)[], start: number, turns: readonly (readonly number[])[]): number {
  const off = maps.flatMap((map, s) =>
    map ? ANGLES.map((angle, k) => Math.abs(wrapped(carried(map, start + angle) - carried(map, start) - (turns[s]?.[k] as number)))) : [],
  );
  return Math.max(...off);
}

/** Maps from the held end to each shaft, null for the held one itself, and where the held yoke starts. */
function mapsFrom(
  held: HeldEnd,
  chain: RandomChain & MultibodyChain,
): { readonly maps: readonly (ArmMap | null)[]; readonly start: number } {
  const { fromSource, toDriven } = chainState(chain.driveline, chain.poses);
  const end = (held === "source" ? chain.directions[0] : chain.directions.at(-1)) as Vector;
  const arm = held === "source" ? chain.sourceArm : (armsAtRest(chain).at(-1)?.[1] as Vector);
  const maps = held === "source" ? [null, ...fromSource] : [...toDriven.map(reverse), null];
  return { maps, start: turnAbout(end, lateral(end), arm) };
}

describe.each(["source", "driven"] as const)("with the %s turned", (held) => {
  test("every shaft of chains of two and three cross joints turns as the bodies of a multibody engine do", () => {
    for (const chain of CHAINS) {
      const { maps, start } = mapsFrom(held, chain);
      expect(worst(maps, start, settledTurns(mujoco, chain, held, ANGLES))).toBeLessThan(SETTLED_WITHIN);
    }
  });
});

describe("the comparison shows", () => {
  const differenceWith = (wrong: (chain: RandomChain & MultibodyChain) => RandomChain & MultibodyChain, startsAhead = 0): number =>
    Math.min(
      ...CHAINS.map((chain) => {
        const { maps, start } = mapsFrom("source", wrong(chain));
        return worst(maps, start + startsAhead, settledTurns(mujoco, chain, "source", ANGLES));
      }),
    );

  test("a joint whose fast and slow quarters are exchanged (cos B for 1/cos B)", () => {
    expect(differenceWith((chain) => chain, Math.PI / 2)).toBeGreaterThan(PLAINLY_WRONG);
  });
  test("a phasing counted the wrong way round", () => {
    const wrong = (chain: RandomChain & MultibodyChain) => ({
      ...chain,
      driveline: {
        ...chain.driveline,
        sections: chain.driveline.sections.map((section) => ({ ...section, phasing: -(section.phasing ?? 0) as never })),
      },
    });
    expect(differenceWith(wrong)).toBeGreaterThan(PLAINLY_WRONG);
  });
  test("headings toward the wrong side", () => {
    const wrong = (chain: RandomChain & MultibodyChain) => ({
      ...chain,
      poses: chain.poses.map(({ inclination, heading }) => ({ inclination, heading: -heading as never })),
    });
    expect(differenceWith(wrong)).toBeGreaterThan(PLAINLY_WRONG);
  });
});
