import type { Benchmark } from "../benchmark.js";
import { analyseCold } from "./analyse-cold.js";
import { attributeMinute } from "./attribute-minute.js";
import { chainThreeJoints } from "./chain-three-joints.js";
import { monteCarloThreeJoints } from "./monte-carlo-three-joints.js";
import { planManyCandidates } from "./plan-many-candidates.js";
import { planThreeAdjusters } from "./plan-three-adjusters.js";
import { readRecordingTable } from "./read-recording-table.js";
import { readRecordingUff } from "./read-recording-uff.js";
import { readRecordingWav } from "./read-recording-wav.js";

/** Every benchmark, in the order of the table. */
export const BENCHMARKS: readonly Benchmark[] = [
  chainThreeJoints,
  monteCarloThreeJoints,
  analyseCold,
  planThreeAdjusters,
  planManyCandidates,
  readRecordingWav,
  readRecordingTable,
  readRecordingUff,
  attributeMinute,
];
