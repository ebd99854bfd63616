import { type CorrectionBasis, toAnalysisInput } from "@halfturn/casefile";
import { analyseDriveline } from "@halfturn/engine/analysis";
import type { Finding } from "@halfturn/engine/findings";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";

/** What is found about a gauging and its driveline does not depend on the draws, so few will do. */
const FEW_DRAWS = 100;
/** A stop finding that was accepted stands as a decision. */
const GROUND = /^(?:decision\.stop-accepted|driveline\.phasing)/;

/** What every number of a prediction rests on in spite of it: a stop finding that was accepted, a phasing that nobody measured. */
export function groundFindings({ document, chosen, input: { drivelines, seed } }: CorrectionBasis): readonly Finding[] {
  return chosen.flatMap((one) => {
    const on = drivelines.find(({ driveline }) => driveline.id === document.drivelines[one.driveline]?.id);
    if (!on || on.refused) return [];
    const { findings } = analyseDriveline(toAnalysisInput(document, one, { defaults: DEFAULT_LIMITS, draws: FEW_DRAWS, seed }));
    return findings.filter(({ code, severity }) => severity === "stop" || GROUND.test(code));
  });
}
