import { type AnalysisSettings, type Case, type GaugingChoice, latestGaugings, type Stage, toAnalysisInput } from "@halfturn/casefile";
import { type AnalysisInput, analyseDriveline, type DrivelineAnalysis } from "@halfturn/engine/analysis";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";

/** One driveline, what it was judged by, and the result. */
export interface AnalysedDriveline {
  readonly stage: Stage | null;
  readonly gauging: number | null;
  readonly input: AnalysisInput;
  readonly analysis: DrivelineAnalysis;
}

export type AnalyseSettings = Required<Omit<AnalysisSettings, "defaults">>;

/** Analyses the chosen gauging of each driveline of a case. */
export const analyseCase = (document: Case, choice: GaugingChoice, settings: AnalyseSettings): readonly AnalysedDriveline[] =>
  latestGaugings(document, choice).map((chosen) => {
    const input = toAnalysisInput(document, chosen, { ...settings, defaults: DEFAULT_LIMITS });
    const stage = chosen.gauging === null ? null : (document.gauging?.[chosen.gauging]?.stage ?? null);
    return { stage, gauging: chosen.gauging, input, analysis: analyseDriveline(input) };
  });

/** Whether any number at all came out. */
export const answersAnything = (analysed: readonly Pick<AnalysedDriveline, "analysis">[]): boolean =>
  analysed.some(({ analysis }) => analysis.shafts.some(({ inclination }) => inclination !== null));

/** With --strict these fail the run: a limit passed, or a stop finding that nobody accepted. */
export const failsStrictly = (analysed: readonly AnalysedDriveline[]): boolean =>
  analysed.some(
    ({ analysis: { withheld, joints, cancellation, motion } }) =>
      withheld || [...joints.map(({ verdict }) => verdict), cancellation.verdict, motion.verdict].includes("over"),
  );
