import { createHash } from "node:crypto";
import type { Case } from "@halfturn/casefile";
import type { CaseRevision } from "@halfturn/exchange";
import type { Transaction } from "kysely";
import { lineOf } from "../case/case-line.js";
import type { By } from "../case-store.js";
import type { CaseRow, Tables } from "../schema/tables.js";
import type { SearchIndex } from "../search/search-index.js";
import { searchWords } from "../search/search-words.js";

export const hashOf = (text: string): string => createHash("sha256").update(text).digest("hex");

/**
 * The number of the change being made. Takes the counter's lock, so it must be the first thing a transaction does: writers then wait for one another here, see
 * what the one before committed, and their numbers rise in the order of their commits.
 */
export async function nextSequence(transaction: Transaction<Tables>): Promise<number> {
  const { value } = await transaction
    .updateTable("counter")
    .set((set) => ({ value: set("value", "+", 1) }))
    .where("name", "=", "sequence")
    .returning("value")
    .executeTakeFirstOrThrow();
  return value;
}

/** A document on its way into the history. */
export interface Entry {
  readonly id: string;
  /** What the list holds of it until now; null for a new case. */
  readonly row: CaseRow | null;
  readonly sequence: number;
  readonly document: Case;
  readonly kind: CaseRevision["kind"];
  readonly by: By;
}

/** Adds to the history of a case and brings its line up to date; what is set aside changes nothing but the count. */
export async function append(transaction: Transaction<Tables>, search: SearchIndex, entry: Entry): Promise<CaseRevision> {
  const { id, row, sequence, document, kind, by } = entry;
  const revision = (row?.last_revision ?? 0) + 1;
  if (kind === "set-aside") await transaction.updateTable("cases").set({ last_revision: revision }).where("id", "=", id).execute();
  else await bringUpToDate(transaction, search, entry, revision);
  const text = JSON.stringify(document);
  await transaction
    .insertInto("revisions")
    .values({
      case_id: id,
      revision,
      sequence,
      kind,
      saved_at: by.savedAt,
      saved_by: by.savedBy,
      document: text,
      hash: hashOf(text),
    })
    .execute();
  return { revision, savedAt: by.savedAt, savedBy: by.savedBy, kind };
}

async function bringUpToDate(transaction: Transaction<Tables>, search: SearchIndex, entry: Entry, revision: number): Promise<void> {
  const { id, row, sequence, document, kind, by } = entry;
  const words = searchWords(document);
  const line = {
    ...lineOf(document),
    ...search.columns(words),
    sequence,
    revision,
    last_revision: revision,
    removed: kind === "removed" ? (1 as const) : (0 as const),
    saved_at: by.savedAt,
    saved_by: by.savedBy,
  };
  if (row === null)
    await transaction
      .insertInto("cases")
      .values({ id, ...line })
      .execute();
  else await transaction.updateTable("cases").set(line).where("id", "=", id).execute();
  await search.index(transaction, { id, sequence, previous: row?.sequence ?? null, removed: line.removed, words });
}
