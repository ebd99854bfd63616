import type { Finding } from "../findings/index.js";
import type { Rpm } from "../units/index.js";
import type { Estimate, Verdict } from "./estimate.js";

/** All angles in radians, accelerations in rad/s2. null = could not be computed from what was gauged; a finding says why. */
export interface DrivelineAnalysis {
  readonly drivelineId: string;
  readonly shafts: readonly ShaftResult[];
  readonly joints: readonly JointResult[];
  readonly cancellation: CancellationResult;
  readonly motion: MotionResult;
  /** Which reading adds most to the uncertainty of the equivalent angle, largest first; empty where that angle is null. */
  readonly sensitivity: readonly Sensitivity[];
  /** A stop finding stands that nobody accepted: every verdict above is withheld. */
  readonly withheld: boolean;
  readonly findings: readonly Finding[];
}

export interface ShaftResult {
  readonly id: string;
  readonly inclination: Estimate | null;
  readonly heading: Estimate | null;
}

export interface JointResult {
  readonly id: string;
  readonly operatingAngle: Estimate | null;
  readonly maximum: number;
  readonly minimum: number;
  readonly verdict: Verdict;
}

export type BenchVerdict = "met" | "acceptable" | "exceeded";

export interface CancellationResult {
  readonly equivalentAngle: Estimate | null;
  readonly equivalentMaximum: number;
  readonly verdict: Verdict;
  readonly benchResidual: Estimate | null;
  readonly benchVerdict: BenchVerdict | null;
  /** For each section the phasing in (-pi/2, pi/2] that would leave least, the others as they stand; sections where it makes no difference are left out. */
  readonly bestPhasing: Readonly<Record<string, number>>;
}

export interface MotionResult {
  readonly transmissionErrorPeakToPeak: Estimate | null;
  /** Single amplitudes (half peak to peak) of the twice- and four-times-a-turn parts. */
  readonly secondOrder: Estimate | null;
  readonly fourthOrder: Estimate | null;
  /** Peak angular acceleration per squared shaft speed, dimensionless; null where unknown. */
  readonly coefficients: MotionCoefficients;
  readonly speeds: readonly SpeedResult[];
  readonly verdict: Verdict;
}

export interface MotionCoefficients {
  readonly driven: Estimate | null;
  readonly sourceCoast: Estimate | null;
  /** Per section: source turning uniformly (drive), driven end turning uniformly (coast). */
  readonly drive: readonly (Estimate | null)[];
  readonly coast: readonly (Estimate | null)[];
}

export interface SectionAcceleration {
  readonly section: string;
  readonly acceleration: Estimate | null;
}

export interface SpeedResult {
  readonly shaftSpeed: Rpm;
  readonly drivenAcceleration: Estimate | null;
  readonly sourceAccelerationCoast: Estimate | null;
  readonly drive: readonly SectionAcceleration[];
  readonly coast: readonly SectionAcceleration[];
}

export interface Sensitivity {
  /** Place of the reading in the case file, or of the driveline where something was not measured at all. */
  readonly path: string;
  /** What it is, in ids: a shaft, or `zero`, or `heading:SHAFT`. */
  readonly of: string;
  /** Share of the variance, 0 to 1. */
  readonly share: number;
}
