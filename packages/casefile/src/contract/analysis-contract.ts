import type { BenchVerdict, Verdict } from "@halfturn/engine/analysis";
import type { Finding } from "@halfturn/engine/findings";
import type { Stage } from "../schema/case.js";

/** A quantity in the unit of its key, its standard uncertainty, and its 95 % interval; null where it could not be computed. */
export type Quantity = { readonly value: number; readonly u: number; readonly interval95: readonly [low: number, high: number] } | null;

export interface ShaftJson {
  readonly id: string;
  readonly inclinationDeg: Quantity;
  readonly headingDeg: Quantity;
}

export interface JointJson {
  readonly id: string;
  readonly operatingAngleDeg: Quantity;
  readonly maximumDeg: number;
  readonly minimumDeg: number;
  readonly verdict: Verdict;
}

export interface CancellationJson {
  readonly equivalentAngleDeg: Quantity;
  readonly equivalentMaximumDeg: number;
  readonly verdict: Verdict;
  readonly benchResidualDeg: Quantity;
  readonly benchVerdict: BenchVerdict | null;
  readonly bestPhasingDeg: Readonly<Record<string, number>>;
}

export interface SectionAccelerationJson {
  readonly section: string;
  readonly accelerationRadS2: Quantity;
}

export interface SpeedJson {
  readonly shaftRpm: number;
  readonly drivenAccelerationRadS2: Quantity;
  readonly sourceAccelerationCoastRadS2: Quantity;
  readonly drive: readonly SectionAccelerationJson[];
  readonly coast: readonly SectionAccelerationJson[];
}

export interface MotionJson {
  readonly transmissionErrorPeakToPeakDeg: Quantity;
  readonly secondOrderDeg: Quantity;
  readonly fourthOrderDeg: Quantity;
  readonly speeds: readonly SpeedJson[];
  readonly verdict: Verdict;
}

export interface SensitivityJson {
  readonly path: string;
  readonly of: string;
  readonly share: number;
}

export interface DrivelineJson {
  readonly id: string;
  readonly stage: Stage | null;
  readonly gauging: number | null;
  readonly shafts: readonly ShaftJson[];
  readonly joints: readonly JointJson[];
  readonly cancellation: CancellationJson;
  readonly motion: MotionJson;
  /** Beyond the contract: which reading adds most to the uncertainty of the equivalent angle, largest first. */
  readonly sensitivity: readonly SensitivityJson[];
}

/** What `analyse --json` prints. */
export interface AnalysisJson {
  readonly format: "halfturn-analysis";
  readonly version: 1;
  readonly seed: number;
  readonly drivelines: readonly DrivelineJson[];
  readonly findings: readonly Finding[];
}
