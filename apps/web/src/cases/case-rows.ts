import { progressOf } from "@halfturn/casefile";
import type { CaseProgress, CaseSummary } from "@halfturn/exchange";
import type { DeviceCase } from "../device/device-case.js";

/** A line of the list, wherever the case lies. */
export interface CaseRow {
  readonly id: string;
  readonly title: string;
  readonly vehicle: string | null;
  readonly progress: CaseProgress;
  /** ISO 8601: when it was last changed, here or on the server. */
  readonly changedAt: string;
  /** It can be opened without a network. */
  readonly here: boolean;
  readonly waiting: boolean;
  /** Somebody has to choose between two devices. */
  readonly conflicts: number;
}

const DIACRITICS = /\p{M}/gu;
/** Capitals and accents make no difference. */
const plain = (text: string): string => text.normalize("NFD").replace(DIACRITICS, "").toLowerCase();

const rowOf = ({ id, document, changedAt, waiting, conflicts }: DeviceCase): CaseRow => ({
  id,
  title: document.title,
  vehicle: document.vehicle?.label ?? null,
  progress: progressOf(document),
  changedAt: document.updatedAt ?? changedAt,
  here: true,
  waiting: waiting === 1,
  conflicts: conflicts.length,
});

const summaryRow = ({ id, title, vehicle, progress, savedAt }: CaseSummary): CaseRow => ({
  id,
  title,
  vehicle,
  progress,
  changedAt: savedAt,
  here: false,
  waiting: false,
  conflicts: 0,
});

/** Whether each word sought begins a word of the case. */
function isSought({ document }: DeviceCase, words: string): boolean {
  const text = plain([document.title, document.vehicle?.label, document.id, document.complaint?.notes, document.notes].join(" "));
  const found = text.split(/[^\p{L}\p{N}]+/u);
  return plain(words)
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "")
    .every((word) => found.some((candidate) => candidate.startsWith(word)));
}

/** The cases of this device in which the words are, and those that only the server has; the newest first. */
export function caseRows(
  kept: readonly DeviceCase[],
  held: readonly CaseSummary[],
  { words, putAway }: { readonly words: string; readonly putAway: boolean },
): readonly CaseRow[] {
  const known = new Set(kept.map(({ id }) => id));
  const here = kept.filter((record) => (record.putAway === 1) === putAway && isSought(record, words)).map(rowOf);
  const elsewhere = held.filter(({ id }) => !known.has(id)).map(summaryRow);
  return [...here, ...elsewhere].sort((a, b) => (a.changedAt < b.changedAt ? 1 : a.changedAt > b.changedAt ? -1 : 0));
}
