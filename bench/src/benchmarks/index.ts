import type { Benchmark } from "../benchmark.js";
import { monteCarloThreeJoints } from "./monte-carlo-three-joints.js";

/** Every benchmark, in the order of the table. */
export const BENCHMARKS: readonly Benchmark[] = [monteCarloThreeJoints];
