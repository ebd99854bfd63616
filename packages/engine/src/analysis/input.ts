import type { FindingCode } from "../findings/index.js";
import type { Gauging } from "../gauging/index.js";
import type { Driveline } from "../kinematics/driveline.js";
import type { LimitSet } from "../limits/index.js";
import type { Rpm } from "../units/index.js";

/** One driveline, one gauging of it, and what to judge it by. */
export interface AnalysisInput {
  readonly driveline: Driveline;
  readonly gauging: Gauging;
  readonly limits: LimitSet;
  /** Highest propeller-shaft speed in use; null = not given, 3000 rpm is taken and a finding says so. */
  readonly maxShaftSpeed: Rpm | null;
  /** Stop findings that a person has accepted. */
  readonly accepted: readonly FindingCode[];
  /** Monte Carlo draws, a whole number of 20 or more, below which no 95 % interval can be told: a RangeError then. */
  readonly draws: number;
  /** Any integer; only its low 32 bits count. */
  readonly seed: number;
  /** Place of the driveline in the case file, for findings: `drivelines[0]`. */
  readonly path: string;
}
