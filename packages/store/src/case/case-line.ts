import { type Case, progressOf } from "@halfturn/casefile";
import type { CaseSummary } from "@halfturn/exchange";
import type { CaseRow } from "../schema/tables.js";

type Line = Pick<CaseRow, "title" | "vehicle" | "gauged" | "corrected" | "proved">;

/** PostgreSQL's text holds every character but this one. */
const NUL = "\0";
const kept = (text: string): string => text.replaceAll(NUL, "\uFFFD");
const flag = (value: boolean): 0 | 1 => (value ? 1 : 0);

/** What a list says of a case. */
export function lineOf(document: Case): Line {
  const label = document.vehicle?.label;
  const { gauged, corrected, proved } = progressOf(document);
  return {
    title: kept(document.title),
    vehicle: label === undefined || label === "" ? null : kept(label),
    gauged: flag(gauged),
    corrected: flag(corrected),
    proved: flag(proved),
  };
}

export const summaryOf = (row: CaseRow): CaseSummary => ({
  id: row.id,
  title: row.title,
  vehicle: row.vehicle,
  revision: row.revision,
  savedAt: row.saved_at,
  savedBy: row.saved_by,
  progress: { gauged: row.gauged === 1, corrected: row.corrected === 1, proved: row.proved === 1 },
});
