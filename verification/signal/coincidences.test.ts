import { uniformDeviates } from "@halfturn/engine/uncertainty";
import { expect, test } from "vitest";
import { hiddenCause, named } from "./hidden-cause.js";
import { between } from "./random-road-test.js";

const RUNS = 60;

/** Vehicles on which two parts turn together or so nearly that no recording parts them, and which of their orders is the cause. */
const TOGETHER = [
  { vehicle: () => ({ gearRatio: 1 }), cause: { part: "propeller-shaft", order: 1 }, other: { part: "engine", order: 1 } },
  { vehicle: () => ({ gearRatio: 1 }), cause: { part: "engine", order: 1 }, other: { part: "propeller-shaft", order: 1 } },
  {
    vehicle: (near: number) => ({ axleRatio: 3 + 0.015 * near, gearRatio: null }),
    cause: { part: "propeller-shaft", order: 1 },
    other: { part: "wheel", order: 3 },
  },
  {
    vehicle: (near: number) => ({ axleRatio: 3 + 0.015 * near, gearRatio: null }),
    cause: { part: "wheel", order: 3 },
    other: { part: "propeller-shaft", order: 1 },
  },
] as const;

test(`of ${TOGETHER.length * RUNS} road tests on which two orders coincide none names either, and each names both as open`, () => {
  const uniform = uniformDeviates(815);
  for (const { vehicle, cause, other } of TOGETHER)
    for (let seed = 0; seed < RUNS; seed++) {
      const run = hiddenCause(seed, uniform, vehicle(between(uniform, -1, 1)), cause);
      expect(named(run)).toBeNull();
      expect(run.result.abstained?.reason).toBe("coincidence");
      expect(run.result.abstained?.between).toEqual(expect.arrayContaining([cause, other]));
    }
});
