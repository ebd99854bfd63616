import type { Case } from "@halfturn/casefile";
import { type Paper, renderHtml, renderPdf, reportContent, reportedCorrections, reportedGaugings } from "@halfturn/report";
import type { Language, Units } from "@halfturn/words";

/** What a report is made from: the same job gives the same bytes. */
export interface ReportJob {
  readonly document: Case;
  readonly kind: "pdf" | "html";
  readonly language: Language;
  readonly units: Units;
  readonly paper: Paper;
  /** The day that the report bears, ISO 8601. */
  readonly date: string;
  readonly version: string;
}

export type ReportOutcome =
  | { readonly ok: true; readonly bytes: Uint8Array }
  /** nothing: no gauging of the case gives a number. */
  | { readonly ok: false; readonly why: "nothing" };

/** As the command line's own report. */
const SETTINGS = { seed: 1, draws: 20_000, accepted: [] };

/** Makes a report, here and now: seconds of work, and memory that the typesetter keeps. A server has it done in a process of its own. */
export function renderReport({ document, kind, language, units, paper, date, version }: ReportJob): ReportOutcome {
  const gaugings = reportedGaugings(document, SETTINGS);
  if (!gaugings.some(({ analysis }) => analysis.shafts.some(({ inclination }) => inclination !== null)))
    return { ok: false, why: "nothing" };
  const corrections = reportedCorrections(document, SETTINGS, gaugings);
  const content = reportContent({ case: document, gaugings, corrections, language, units, date, toolVersion: version });
  const bytes = kind === "html" ? new TextEncoder().encode(renderHtml(content)) : renderPdf(content, { paper });
  return { ok: true, bytes };
}
