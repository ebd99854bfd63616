import type { Case } from "@halfturn/casefile";
import type { AnalysisInput, DrivelineAnalysis } from "@halfturn/engine/analysis";
import type { Language } from "@halfturn/words";

/** One gauging of one driveline, what went into its analysis and what came out. */
export interface ReportedGauging {
  /** Index in the case's `gauging`; null for a driveline that was never gauged. */
  readonly gauging: number | null;
  readonly input: AnalysisInput;
  readonly analysis: DrivelineAnalysis;
}

export interface ReportInput {
  readonly case: Case;
  /** In the order of printing; where one driveline has two stages, as-found first. */
  readonly gaugings: readonly ReportedGauging[];
  readonly language: Language;
  /** The day the report bears, ISO 8601; handed in, so that one input gives one document. */
  readonly date: string;
  readonly toolVersion: string;
}
