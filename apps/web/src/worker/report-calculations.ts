import type { Case } from "@halfturn/casefile";
import {
  type ReportContent,
  type ReportedCorrection,
  type ReportInput,
  renderHtml,
  reportContent,
  reportedCorrections,
  reportedGaugings,
} from "@halfturn/report/browser";
import type { Language, Units } from "@halfturn/words";

export interface ReportRequest {
  readonly language: Language;
  readonly units: Units;
  /** The day the report bears, ISO 8601. */
  readonly date: string;
  readonly toolVersion: string;
  /** How wide the place for a figure is on the screen, where that is narrower than paper. */
  readonly figureWidth?: number;
}

interface Sureness {
  readonly draws: number;
  readonly seed: number;
}

export interface MadeReport {
  readonly content: ReportContent;
  /** The same with figures as wide as paper. */
  readonly onPaper: ReportContent;
  /** The same as one file. */
  readonly html: string;
}

/** The whole report of a case, worked out and worded. */
export function makeReport(document: Case, { figureWidth, ...request }: ReportRequest, sureness: Sureness): MadeReport {
  const settings = { ...sureness, accepted: [] };
  const gaugings = reportedGaugings(document, settings);
  const input: ReportInput = { ...request, case: document, gaugings, corrections: reportedCorrections(document, settings, gaugings) };
  const onPaper = reportContent(input);
  return { content: figureWidth === undefined ? onPaper : reportContent({ ...input, figureWidth }), onPaper, html: renderHtml(onPaper) };
}

/** Every correction with the results on both sides of it. */
export const correctionsOf = (document: Case, sureness: Sureness): readonly ReportedCorrection[] =>
  reportedCorrections(document, { ...sureness, accepted: [] }, []);
