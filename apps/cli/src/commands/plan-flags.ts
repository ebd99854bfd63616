import type { FindingCode } from "@halfturn/engine/findings";
import type { Language, Units } from "@halfturn/words";

export interface PlanFlags {
  readonly maxChanges: number;
  /** As typed: an adjuster, a kind, or `axle`. */
  readonly keep?: readonly string[];
  /** Numbers of plans in the ranking, from 1. */
  readonly show?: number;
  readonly choose?: number;
  readonly gauging?: number;
  readonly accept?: readonly FindingCode[];
  readonly json: boolean;
  readonly seed: number;
  readonly draws: number;
  readonly units?: Units;
  readonly lang?: Language;
}
