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

/** What was made of one thing is made once: lists are made anew at every letter that is sought, their rows stay the same ones. */
function once<From extends object, Made>(make: (from: From) => Made): (from: From) => Made {
  const made = new WeakMap<From, Made>();
  return (from) => {
    const known = made.get(from);
    if (known !== undefined) return known;
    const fresh = make(from);
    made.set(from, fresh);
    return fresh;
  };
}

const rowOf = once(
  ({ id, document, changedAt, waiting, conflicts }: DeviceCase): CaseRow => ({
    id,
    title: document.title,
    vehicle: document.vehicle?.label ?? null,
    progress: progressOf(document),
    changedAt: document.updatedAt ?? changedAt,
    here: true,
    waiting: waiting === 1,
    conflicts: conflicts.length,
  }),
);

const summaryRow = once(
  ({ id, title, vehicle, progress, savedAt }: CaseSummary): CaseRow => ({
    id,
    title,
    vehicle,
    progress,
    changedAt: savedAt,
    here: false,
    waiting: false,
    conflicts: 0,
  }),
);

const wordsIn = (text: string): readonly string[] =>
  plain(text)
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");

/** What a case is found by. */
const foundBy = once(({ document }: DeviceCase) =>
  wordsIn([document.title, document.vehicle?.label, document.id, document.complaint?.notes, document.notes].join(" ")),
);

/** Whether each word sought begins a word of the case. */
const isSought = (kept: DeviceCase, sought: readonly string[]): boolean =>
  sought.every((word) => foundBy(kept).some((candidate) => candidate.startsWith(word)));

/** The cases of this device in which the words are, and those that only the server has; the newest first. */
export function caseRows(
  kept: readonly DeviceCase[],
  held: readonly CaseSummary[],
  { words, putAway }: { readonly words: string; readonly putAway: boolean },
): readonly CaseRow[] {
  const sought = wordsIn(words);
  const known = new Set(kept.map(({ id }) => id));
  const here = kept.filter((record) => (record.putAway === 1) === putAway && isSought(record, sought)).map(rowOf);
  const elsewhere = held.filter(({ id }) => !known.has(id)).map(summaryRow);
  return [...here, ...elsewhere].sort(newestFirst);
}

/** Of the same moment by their names, so that no row moves without need. */
const newestFirst = (a: CaseRow, b: CaseRow): number => compared(b.changedAt, a.changedAt) || compared(a.id, b.id);
const compared = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** A row in the list as it is drawn at first. */
export interface DrawnRow {
  readonly row: CaseRow;
  /** It stands there from before, and goes as the device can. */
  readonly isLeft: boolean;
}

/** About as many as a screen shows below the field: these are drawn at once. */
const FIRST_ROWS = 6;

/** Of the rows that are wanted, the first and those that stand there already; where those go that are not wanted, they are left for now, since to take many out takes long. */
export function drawnRows(wanted: readonly CaseRow[], standing: readonly CaseRow[]): readonly DrawnRow[] {
  const isStanding = new Set(standing.map(({ id }) => id));
  const isWanted = new Set(wanted.map(({ id }) => id));
  const drawn = wanted.filter(({ id }, k) => k < FIRST_ROWS || isStanding.has(id));
  const left = standing.filter(({ id }) => !isWanted.has(id));
  return [...drawn, ...left].sort(newestFirst).map((row) => ({ row, isLeft: !isWanted.has(row.id) }));
}
