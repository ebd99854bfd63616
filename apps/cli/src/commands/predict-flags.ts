import type { FindingCode } from "@halfturn/engine/findings";
import type { Language, Units } from "@halfturn/words";

export interface PredictFlags {
  /** As typed: ID=AMOUNT. What they mean depends on the case. */
  readonly change: readonly string[];
  readonly gauging?: number;
  readonly accept?: readonly FindingCode[];
  readonly json: boolean;
  readonly seed: number;
  readonly draws: number;
  readonly units?: Units;
  readonly lang?: Language;
}
