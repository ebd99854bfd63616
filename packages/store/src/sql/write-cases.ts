import type { Case } from "@halfturn/casefile";
import type { Transaction } from "kysely";
import type { BroughtBack, By, Created, PutAway, Saved } from "../case-store.js";
import type { CaseRow, RevisionTable, Tables } from "../schema/tables.js";
import type { SearchIndex } from "../search/search-index.js";
import { append, hashOf, nextSequence } from "./changes.js";
import { documentOf, heldOf, keptRow, revisionOf, rowOf } from "./read-rows.js";

/** Inside one transaction of its own; see CaseStore for what each does. */
export interface Writing {
  readonly transaction: Transaction<Tables>;
  readonly search: SearchIndex;
}

export async function createCase({ transaction, search }: Writing, document: Case, by: By): Promise<Created> {
  const sequence = await nextSequence(transaction);
  const row = await rowOf(transaction, document.id);
  if (row === null)
    return { ok: true, revision: await append(transaction, search, { id: document.id, row, sequence, document, kind: "saved", by }) };
  const again = await sameAsHeld(transaction, row, document);
  if (again !== null && row.revision === 1) return { ok: true, revision: revisionOf(again) };
  return row.removed === 1 ? { ok: false, why: "put-away", revision: row.revision } : { ok: false, why: "exists" };
}

export async function createCases({ transaction, search }: Writing, documents: readonly Case[], by: By): Promise<void> {
  for (const document of documents) {
    const sequence = await nextSequence(transaction);
    await append(transaction, search, { id: document.id, row: null, sequence, document, kind: "saved", by });
  }
}

export async function saveCase({ transaction, search }: Writing, document: Case, over: number, by: By): Promise<Saved> {
  const { id } = document;
  const sequence = await nextSequence(transaction);
  const row = await rowOf(transaction, id);
  if (row === null) return { ok: false, why: "unknown" };
  const entry = { id, row, sequence, document, by };
  if (row.removed === 1) {
    const setAside = await append(transaction, search, { ...entry, kind: "set-aside" });
    return { ok: false, why: "put-away", revision: row.revision, setAside };
  }
  if (row.revision === over) return { ok: true, revision: await append(transaction, search, { ...entry, kind: "saved" }) };
  // A save whose answer got lost is sent again: what is held is already what is being saved.
  const again = await sameAsHeld(transaction, row, document);
  if (again !== null) return { ok: true, revision: revisionOf(again) };
  const current = heldOf(await heldRow(transaction, row));
  return { ok: false, why: "conflict", current, setAside: await append(transaction, search, { ...entry, kind: "set-aside" }) };
}

export async function putAwayCase({ transaction, search }: Writing, id: string, over: number, by: By): Promise<PutAway> {
  const sequence = await nextSequence(transaction);
  const row = await rowOf(transaction, id);
  if (row === null) return { ok: false, why: "unknown" };
  if (row.removed === 1) return { ok: false, why: "put-away", revision: row.revision };
  const held = await heldRow(transaction, row);
  if (row.revision !== over) return { ok: false, why: "conflict", current: heldOf(held) };
  const revision = await append(transaction, search, { id, row, sequence, document: documentOf(held), kind: "removed", by });
  return { ok: true, revision };
}

export async function bringBackCase({ transaction, search }: Writing, id: string, by: By): Promise<BroughtBack> {
  const sequence = await nextSequence(transaction);
  const row = await rowOf(transaction, id);
  if (row === null) return { ok: false, why: "unknown" };
  if (row.removed === 0) return { ok: false, why: "not-put-away" };
  const document = documentOf(await heldRow(transaction, row));
  return { ok: true, revision: await append(transaction, search, { id, row, sequence, document, kind: "saved", by }) };
}

/** The revision that counts. Its absence would be damage, and a programmer error here: both are written in one transaction. */
async function heldRow(transaction: Transaction<Tables>, row: CaseRow): Promise<RevisionTable> {
  const held = await keptRow(transaction, row.id, row.revision);
  if (held === null) throw new Error(`case ${row.id} has no revision ${row.revision}`);
  return held;
}

async function sameAsHeld(transaction: Transaction<Tables>, row: CaseRow, document: Case): Promise<RevisionTable | null> {
  if (row.removed === 1) return null;
  const held = await heldRow(transaction, row);
  return held.hash === hashOf(JSON.stringify(document)) ? held : null;
}
