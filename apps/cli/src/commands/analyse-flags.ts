import type { Stage } from "@halfturn/casefile";
import type { FindingCode } from "@halfturn/engine/findings";
import type { Language, Units } from "@halfturn/words";

export interface AnalyseFlags {
  readonly stage?: Stage;
  readonly gauging?: number;
  readonly accept?: readonly FindingCode[];
  readonly strict: boolean;
  readonly json: boolean;
  readonly seed: number;
  readonly draws: number;
  readonly units?: Units;
  readonly lang?: Language;
}
