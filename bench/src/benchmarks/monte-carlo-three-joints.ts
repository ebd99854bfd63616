import { chainEstimates } from "@halfturn/engine/analysis";
import { fuseGauging } from "@halfturn/engine/gauging";
import type { Benchmark } from "../benchmark.js";
import { threeJointGauging, threeJoints } from "./three-joints.js";

const DRAWS = 100_000;

/** Every quantity of the chain with its interval: joint angles, equivalent angle, each section in drive and on coast, bench residual. */
export const monteCarloThreeJoints: Benchmark = {
  name: "monte-carlo-three-joints",
  what: `all quantities of a gauged three-joint chain, ${DRAWS} draws and their intervals`,
  prepare: () => {
    const model = fuseGauging(threeJointGauging, threeJoints);
    return () => chainEstimates(threeJoints, model, { draws: DRAWS, seed: 1, beyond: () => false }).whole?.interval.high ?? Number.NaN;
  },
};
