import type { Case } from "@halfturn/casefile";
import type { CaseRevision, HeldCase } from "@halfturn/exchange";
import type { Kysely } from "kysely";
import type { CaseRow, RevisionTable, Tables } from "../schema/tables.js";
import { CASE_COLUMNS } from "./case-columns.js";

export const rowOf = async (db: Kysely<Tables>, id: string): Promise<CaseRow | null> =>
  (await db.selectFrom("cases").select(CASE_COLUMNS).where("id", "=", id).executeTakeFirst()) ?? null;

export const keptRow = async (db: Kysely<Tables>, id: string, revision: number): Promise<RevisionTable | null> =>
  (await db.selectFrom("revisions").selectAll().where("case_id", "=", id).where("revision", "=", revision).executeTakeFirst()) ?? null;

/** The document as it was restored when it came in; what is in the store has passed that gate. */
export const documentOf = (row: Pick<RevisionTable, "document">): Case => JSON.parse(row.document) as Case;

export const revisionOf = ({ revision, saved_at, saved_by, kind }: Omit<RevisionTable, "document" | "hash" | "case_id" | "sequence">) =>
  ({ revision, savedAt: saved_at, savedBy: saved_by, kind }) satisfies CaseRevision;

export const heldOf = (row: RevisionTable): HeldCase => ({
  revision: row.revision,
  savedAt: row.saved_at,
  savedBy: row.saved_by,
  document: documentOf(row),
});
