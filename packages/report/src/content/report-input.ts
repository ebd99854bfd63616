import type { Case, JudgedCorrection } from "@halfturn/casefile";
import type { AnalysisInput, DrivelineAnalysis } from "@halfturn/engine/analysis";
import type { Language, Units } from "@halfturn/words";

/** One gauging of one driveline, what went into its analysis and what came out. */
export interface ReportedGauging {
  /** Index in the case's `gauging`; null for a driveline that was never gauged. */
  readonly gauging: number | null;
  readonly input: AnalysisInput;
  readonly analysis: DrivelineAnalysis;
}

/** One correction of the case with the results on both sides of it. */
export interface ReportedCorrection extends Pick<JudgedCorrection, "correction" | "judged"> {
  /** Of the gaugings that it was worked out from. */
  readonly before: readonly ReportedGauging[];
  /** Of the gaugings after it; empty until then. */
  readonly after: readonly ReportedGauging[];
}

export interface ReportInput {
  readonly case: Case;
  /** In the order of printing; where one driveline has two stages, as-found first. */
  readonly gaugings: readonly ReportedGauging[];
  /** Every correction of the case, in its order. */
  readonly corrections: readonly ReportedCorrection[];
  readonly language: Language;
  /** In which units lengths, distances and road speeds are printed; metric unless given. */
  readonly units?: Units;
  /** How wide figures are drawn, in pixels; as paper needs them unless given. */
  readonly figureWidth?: number;
  /** The day the report bears, ISO 8601; handed in, so that one input gives one document. */
  readonly date: string;
  readonly toolVersion: string;
}
