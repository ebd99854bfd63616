import { judgePrediction, type Outcome, type PredictionVerdict } from "@halfturn/engine/correction";
import type { ChosenGauging } from "../convert/latest-gaugings.js";
import type { CorrectionSettings } from "../convert/to-correction-input.js";
import type { Case } from "../schema/case.js";
import { beforeAfterPairs, gaugingsAfter, gaugingsBefore } from "./before-after-pairs.js";

/** A correction of the case, the gaugings on both sides of it, and how its prediction held. */
export interface JudgedCorrection {
  /** Its place in `corrections`. */
  readonly correction: number;
  /** What it was worked out from. */
  readonly before: readonly ChosenGauging[];
  /** What was gauged after it; empty until then. */
  readonly after: readonly ChosenGauging[];
  /** null where nothing was gauged after it, or only what a stop finding spoils. */
  readonly judged: Outcome<PredictionVerdict> | null;
}

/** Every correction of the case in its order, held against the gauging that followed it where there is one. */
export function judgedCorrections(document: Case, settings: CorrectionSettings): readonly JudgedCorrection[] {
  const pairs = beforeAfterPairs(document, settings);
  return (document.corrections ?? []).map((_, correction) => {
    const pair = pairs.find((one) => one.correction === correction);
    return {
      correction,
      before: gaugingsBefore(document, correction),
      after: gaugingsAfter(document, correction),
      judged: pair ? judgePrediction(pair) : null,
    };
  });
}
