import { type AnalyseSettings, type Case, type ChosenGauging, judgedCorrections, toAnalysisInput } from "@halfturn/casefile";
import { analyseDriveline } from "@halfturn/engine/analysis";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import type { ReportedCorrection, ReportedGauging } from "./report-input.js";

/** Every correction of a case with the results of the gaugings before and after it; what is `known` already is not worked out again. */
export function reportedCorrections(
  document: Case,
  settings: AnalyseSettings,
  known: readonly ReportedGauging[],
): readonly ReportedCorrection[] {
  const from = { ...settings, defaults: DEFAULT_LIMITS };
  const results = new Map(known.map((one) => [one.gauging, one]));
  const analysed = (chosen: ChosenGauging): ReportedGauging => {
    const found = chosen.gauging === null ? undefined : results.get(chosen.gauging);
    if (found) return found;
    const input = toAnalysisInput(document, chosen, from);
    const fresh = { gauging: chosen.gauging, input, analysis: analyseDriveline(input) };
    results.set(chosen.gauging, fresh);
    return fresh;
  };
  return judgedCorrections(document, from).map(({ correction, judged, before, after }) => ({
    correction,
    judged,
    before: before.map(analysed),
    after: after.map(analysed),
  }));
}
