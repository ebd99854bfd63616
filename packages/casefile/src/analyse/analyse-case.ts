import { type AnalysisInput, analyseDriveline, type DrivelineAnalysis } from "@halfturn/engine/analysis";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { type GaugingChoice, latestGaugings } from "../convert/latest-gaugings.js";
import { type AnalysisSettings, toAnalysisInput } from "../convert/to-analysis-input.js";
import type { Case, Stage } from "../schema/case.js";

/** One driveline, what it was judged by, and the result. */
export interface AnalysedDriveline {
  readonly stage: Stage | null;
  /** Index in the case's `gauging`; null where the driveline was never gauged. */
  readonly gauging: number | null;
  readonly input: AnalysisInput;
  readonly analysis: DrivelineAnalysis;
}

export type AnalyseSettings = Required<Omit<AnalysisSettings, "defaults">>;

/** Analyses the chosen gauging of each driveline of a case, by the limits of the case over the built-in ones. */
export const analyseCase = (document: Case, choice: GaugingChoice, settings: AnalyseSettings): readonly AnalysedDriveline[] =>
  latestGaugings(document, choice).map((chosen) => {
    const input = toAnalysisInput(document, chosen, { ...settings, defaults: DEFAULT_LIMITS });
    const stage = chosen.gauging === null ? null : (document.gauging?.[chosen.gauging]?.stage ?? null);
    return { stage, gauging: chosen.gauging, input, analysis: analyseDriveline(input) };
  });
