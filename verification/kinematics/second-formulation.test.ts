import {
  type ArmMap,
  chainState,
  equivalentAngle,
  peakAccelerationCoefficient,
  transmissionErrorAt,
  transmissionErrorPeakToPeak,
  unevennessOf,
  wholeChain,
} from "@halfturn/engine/kinematics";
import { type Deviates, uniformDeviates } from "@halfturn/engine/uncertainty";
import { degreesToRadians, radians } from "@halfturn/engine/units";
import { describe, expect, test } from "vitest";
import { type Bend, bentChain, lateral, type RandomChain } from "./random-chain.js";
import { type SecondFormulation, secondFormulation } from "./second-formulation.js";
import type { Vector } from "./vectors.js";

/** Relative. Rounding grows to some 1e-13 along six joints; near cancelling, where more digits go, the bounds below take over. */
const RELATIVE = 1e-9;
/** Degrees: what a rounded unit of 1e-16 in tan^2(b/2) becomes (some 2e-6), with room for six joints. */
const NEAR_ZERO_DEG = 1e-5;
/** Radians and plain numbers: of the order of tan^2(b/2) itself, so that rounding leaves some 1e-16 of them. */
const NEAR_ZERO_SQUARE = 1e-14;
const CASES_PER_LENGTH = 600;

const MOST_DEG = 30;
/** A chain of pairs that bend forth and back with yokes in line, and so cancels but for rounding; an odd joint out stands in line. */
function drawCancelling(joints: number, uniform: Deviates): RandomChain {
  const bends: Bend[] = [];
  while (bends.length + 2 <= joints) {
    const [byDeg, towardDeg] = [MOST_DEG * uniform(), 360 * uniform()];
    bends.push({ byDeg, towardDeg }, { byDeg: -byDeg, towardDeg });
  }
  if (bends.length < joints) bends.push({ byDeg: 0, towardDeg: 0 });
  return bentChain(
    bends,
    Array.from({ length: joints - 1 }, (_, s) => (s % 2 === 0 ? 0 : 180 * uniform() - 90)),
  );
}

/** Angles of 0 to 30 degrees: one joint in six exactly in line, one nearly so; half of the phasings in line or a quarter turn; a quarter of the chains in one plane, one in ten cancelling. */
function drawChain(joints: number, uniform: Deviates): RandomChain {
  if (uniform() < 0.1) return drawCancelling(joints, uniform);
  const planar = uniform() < 0.25;
  const bends = Array.from({ length: joints }, (): Bend => {
    const kind = uniform();
    const byDeg = kind < 1 / 6 ? 0 : kind < 1 / 3 ? 1e-4 * uniform() : MOST_DEG * uniform();
    return { byDeg, towardDeg: planar ? 180 * Math.round(uniform()) : 360 * uniform() };
  });
  const phasings = Array.from({ length: joints - 1 }, () => (uniform() < 0.5 ? 90 * Math.round(uniform()) : 180 * uniform() - 90));
  return bentChain(bends, phasings);
}

/** The larger of the error over its tolerance for each figure of one motion: 1 is just allowed. */
function excess(map: ArmMap, second: SecondFormulation): Readonly<Record<"angle" | "peakToPeak" | "acceleration", number>> {
  const uneven = unevennessOf(map);
  const against = (first: number, other: number, absolute: number): number =>
    Math.abs(first - other) / Math.max(absolute, RELATIVE * Math.abs(other));
  return {
    angle: against(equivalentAngle(uneven), second.equivalentAngle, degreesToRadians(NEAR_ZERO_DEG)),
    peakToPeak: against(transmissionErrorPeakToPeak(uneven), second.peakToPeak, NEAR_ZERO_SQUARE),
    acceleration: against(peakAccelerationCoefficient(uneven), second.accelerationCoefficient, NEAR_ZERO_SQUARE),
  };
}

describe.each([1, 2, 3, 4, 5, 6])("chains of %i joints", (joints) => {
  const uniform = uniformDeviates(1000 + joints);
  const chains = Array.from({ length: CASES_PER_LENGTH }, () => drawChain(joints, uniform));

  test("move alike in both formulations, every section, driving and coasting", () => {
    for (const { driveline, poses, directions, phasings } of chains) {
      const state = chainState(driveline, poses);
      const second = secondFormulation(directions, phasings);
      const pairs = [
        [wholeChain(state), second.whole],
        // Run backwards the whole moves as it does forwards.
        [wholeChain(state), second.wholeCoasting],
        ...second.drive.map((motion, s) => [state.fromSource[s] as ArmMap, motion] as const),
        ...second.coast.map((motion, s) => [state.toDriven[s + 1] as ArmMap, motion] as const),
      ] as const;
      for (const [map, motion] of pairs) {
        for (const times of Object.values(excess(map, motion))) expect(times).toBeLessThan(1);
      }
    }
  });

  test("lead and lag at the same places of the turn", () => {
    for (const { driveline, poses, directions, phasings } of chains) {
      const whole = wholeChain(chainState(driveline, poses));
      const second = secondFormulation(directions, phasings).whole;
      const reference = lateral(directions[0] as Vector);
      const off = Array.from({ length: 12 }, (_, step) => {
        const t = (Math.PI * step) / 12 + 0.1;
        return Math.abs(transmissionErrorAt(whole, t) - second.leadFrom(reference, t));
      });
      expect(Math.max(...off)).toBeLessThan(NEAR_ZERO_SQUARE);
    }
  });
});

test("the comparison shows a phasing counted the wrong way round", () => {
  const { driveline, poses, directions, phasings } = bentChain(
    [
      { byDeg: 5, towardDeg: 0 },
      { byDeg: 4, towardDeg: 70 },
    ],
    [25],
  );
  const wrong = {
    ...driveline,
    sections: driveline.sections.map((section) => ({ ...section, phasing: radians(-(section.phasing ?? 0)) })),
  };
  expect(excess(wholeChain(chainState(wrong, poses)), secondFormulation(directions, phasings).whole).angle).toBeGreaterThan(1000);
});
