import { type AnalyseSettings, type Case, type ChosenGauging, latestGaugings, toAnalysisInput } from "@halfturn/casefile";
import { analyseDriveline } from "@halfturn/engine/analysis";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import type { ReportedGauging } from "./report-input.js";

/**
 * For each driveline the last gauging as found and the last one after correction, in that order, with their results.
 * A driveline that was never gauged stands there once, without a gauging, so that the report can say so.
 */
export function reportedGaugings(document: Case, settings: AnalyseSettings): readonly ReportedGauging[] {
  const stages = (["as-found", "after"] as const).map((stage) => latestGaugings(document, { stage }));
  const chosen = document.drivelines.flatMap((_, driveline): readonly ChosenGauging[] => {
    const gauged = stages.flatMap((all) => all.filter((one) => one.driveline === driveline && one.gauging !== null));
    return gauged.length > 0 ? gauged : [{ driveline, gauging: null }];
  });
  return chosen.map((one) => {
    const input = toAnalysisInput(document, one, { ...settings, defaults: DEFAULT_LIMITS });
    return { gauging: one.gauging, input, analysis: analyseDriveline(input) };
  });
}
