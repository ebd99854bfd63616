import type { Finding } from "../findings/index.js";
import type { Radians } from "../units/index.js";

/** One independent source of error behind the estimated poses. */
export interface ErrorSource {
  /** Place in the case file of the reading (or of the missing one). */
  readonly path: string;
  /** The shaft it was read on, `zero` for the gauge's own zero, `heading:SHAFT` for a plan-view direction. */
  readonly of: string;
  readonly shape: "rectangular" | "normal";
  /** Standard uncertainty, in radians. A rectangular source has half width u sqrt 3. */
  readonly u: number;
  /** measured: scatter of a reading about the truth. assumed: scatter of the truth about a value nobody measured. */
  readonly origin: "measured" | "assumed";
}

/**
 * How the shafts lie, as the readings tell it: best estimate plus a linear law for the errors.
 * inclination[s] + sum over k of inclinationBy[s][k] e[k], with independent e[k] of the shape and u of sources[k]; headings alike.
 * A shaft that cannot be known from the readings has null and a zero row.
 */
export interface PoseModel {
  readonly shafts: readonly string[];
  readonly inclination: readonly (Radians | null)[];
  readonly heading: readonly Radians[];
  readonly sources: readonly ErrorSource[];
  readonly inclinationBy: readonly (readonly number[])[];
  readonly headingBy: readonly (readonly number[])[];
  readonly findings: readonly Finding[];
}
