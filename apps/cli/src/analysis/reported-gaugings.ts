import { type Case, type ChosenGauging, latestGaugings, toAnalysisInput } from "@halfturn/casefile";
import { analyseDriveline } from "@halfturn/engine/analysis";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import type { ReportedGauging } from "@halfturn/report";
import type { AnalyseSettings } from "./analyse-case.js";

type Gauged = ChosenGauging & { readonly gauging: number };

const isGauged = (chosen: ChosenGauging): chosen is Gauged => chosen.gauging !== null;

/** For each driveline the last gauging as found and the last one after correction, in that order, with their results. */
export function reportedGaugings(document: Case, settings: AnalyseSettings): readonly ReportedGauging[] {
  const chosen = (["as-found", "after"] as const).flatMap((stage) => latestGaugings(document, { stage }).filter(isGauged));
  return chosen
    .toSorted((a, b) => a.driveline - b.driveline)
    .map((one) => {
      const input = toAnalysisInput(document, one, { ...settings, defaults: DEFAULT_LIMITS });
      return { gauging: one.gauging, input, analysis: analyseDriveline(input) };
    });
}
