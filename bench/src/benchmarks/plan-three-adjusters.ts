import { planSteps } from "@halfturn/engine/correction";
import { degreesToRadians } from "@halfturn/engine/units";
import type { Benchmark } from "../benchmark.js";
import { correctionCase, STATES, sizes } from "./correction-cases.js";

/** The search that a workshop waits for: ranking with uncertainty, and the best plan predicted in every state. */
export const planThreeAdjusters: Benchmark = {
  name: "plan-three-adjusters",
  what: "plan over 3 adjusters of 21 sizes, three at once, 5 states, 500 common draws",
  prepare: () => {
    const input = correctionCase([sizes(21, degreesToRadians(5)), sizes(21, 0.042), sizes(21, 0.021)], STATES);
    return () => {
      const steps = planSteps(input, { count: 1, maxChanges: 3, detailDraws: 200 });
      for (let step = steps.next(); ; step = steps.next()) {
        if (step.done)
          return step.value.ok ? step.value.value.examined + (step.value.value.plans[0]?.probabilityOfLimits ?? 0) : Number.NaN;
      }
    };
  },
};
