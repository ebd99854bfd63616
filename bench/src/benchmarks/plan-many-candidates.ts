import { planSteps } from "@halfturn/engine/correction";
import { degreesToRadians } from "@halfturn/engine/units";
import type { Benchmark } from "../benchmark.js";
import { correctionCase, STATES, sizes } from "./correction-cases.js";

/** A tenth of the largest stock that is let through; a million candidates take ten times as long (the table of best estimates is most of it). */
export const planManyCandidates: Benchmark = {
  name: "plan-many-candidates",
  what: "plan over 103 823 candidates (3 adjusters of 46 sizes, three at once), 2 states",
  prepare: () => {
    const input = correctionCase([sizes(46, degreesToRadians(5)), sizes(46, 0.046), sizes(46, 0.023)], STATES.slice(0, 2));
    return () => {
      const steps = planSteps(input, { count: 1, maxChanges: 3, detailDraws: 200 });
      for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value.ok ? step.value.value.examined : Number.NaN;
    };
  },
};
