import { predict } from "@halfturn/engine/correction";
import { uniformDeviates } from "@halfturn/engine/uncertainty";
import { degreesToRadians } from "@halfturn/engine/units";
import { expect, test } from "vitest";
import { afterChanges, angleOf, type RigidVehicle, type V } from "./rigid-vehicle.js";
import { BUILD, misread, workshopCase } from "./workshop-case.js";

const TRUTH: RigidVehicle = {
  inclination: [4.2, 2.6, 5.1, 1.1].map(degreesToRadians),
  heading: [0.2, 0.8, -0.3, 0].map(degreesToRadians),
  ...BUILD,
};
const CHANGES = { wedge: degreesToRadians(2), drop: 0.012, spacer: 0.006 };
const RUNS = 2000;

/** 95 % promised; 93 to 97 % is what 2000 runs can tell from it with room to spare (one standard deviation is half a per cent). */
const PROMISED = { low: 0.93, high: 0.97 };

test("predicted joint angles and slip travel hold the truth of an independent rigid body in 93 to 97 cases of a hundred", () => {
  const right = afterChanges(TRUTH, CHANGES);
  const angles = [0, 1, 2].map((k) => angleOf(right.directions[k] as V, right.directions[k + 1] as V));
  const uniform = uniformDeviates(2024);
  const held = [0, 0, 0, 0];
  const count = (which: number, truth: number, estimate: { readonly low: number; readonly high: number } | null | undefined): void => {
    if (estimate && estimate.low <= truth && truth <= estimate.high) held[which] = (held[which] ?? 0) + 1;
  };
  for (let run = 0; run < RUNS; run++) {
    const outcome = predict(workshopCase(misread(TRUTH, uniform), run, 400), [
      { adjusterId: "wedge", amount: CHANGES.wedge },
      { adjusterId: "drop", amount: CHANGES.drop },
      { adjusterId: "spacer", amount: CHANGES.spacer },
    ]);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.reasons));
    const on = outcome.value.states[0]?.drivelines[0];
    angles.forEach((angle, k) => {
      count(k, angle, on?.joints[k]?.operatingAngle);
    });
    count(3, right.slip, on?.slipTravel);
  }
  for (const each of held) {
    expect(each / RUNS).toBeGreaterThan(PROMISED.low);
    expect(each / RUNS).toBeLessThan(PROMISED.high);
  }
}, 120_000);
