import type { CaseHistory } from "@halfturn/exchange";
import type { Kysely } from "kysely";
import { writeBackup } from "../backup/write-backup.js";
import type { CaseStore, Change, KeptRevision, Read } from "../case-store.js";
import type { Database } from "../database/database.js";
import { sqlDeviceStore } from "../devices/sql-device-store.js";
import type { Tables } from "../schema/tables.js";
import { attachmentsOf, attachPicture, detachPicture, pictureOf } from "./attachments.js";
import { checkContents } from "./check-contents.js";
import { inTransaction } from "./in-transaction.js";
import { listCases } from "./list-cases.js";
import { documentOf, heldOf, keptRow, revisionOf, rowOf } from "./read-rows.js";
import { bringBackCase, createCase, createCases, putAwayCase, saveCase, type Writing } from "./write-cases.js";

/** The store over a database whose tables are up to date. */
export function sqlCaseStore(database: Database): CaseStore {
  const { db, search, faultOf } = database;

  /** Runs a question or a change, and makes what the engine throws a fault of the store. */
  async function guarded<Answer>(work: (db: Kysely<Tables>) => Promise<Answer>): Promise<Answer> {
    try {
      return await work(db);
    } catch (error) {
      throw faultOf(error);
    }
  }
  const writing = <Answer>(work: (writing: Writing) => Promise<Answer>): Promise<Answer> =>
    guarded(() =>
      inTransaction(db, async (transaction) => {
        const answer = await work({ transaction, search });
        database.checkPlace();
        return answer;
      }),
    );

  return {
    engine: database.engine,
    place: database.place,
    devices: sqlDeviceStore(db, guarded),
    list: (query) => guarded(() => listCases(db, search, query)),
    read: (id) => guarded(() => readCase(db, id)),
    create: (document, by) => writing((one) => createCase(one, document, by)),
    createAll: (documents, by) => writing((one) => createCases(one, documents, by)),
    save: (document, over, by) => writing((one) => saveCase(one, document, over, by)),
    putAway: (id, over, by) => writing((one) => putAwayCase(one, id, over, by)),
    bringBack: (id, by) => writing((one) => bringBackCase(one, id, by)),
    history: (id) => guarded(() => historyOf(db, id)),
    revision: (id, revision) => guarded(() => keptRevision(db, id, revision)),
    changesAfter: (sequence, limit) => guarded(() => changesAfter(db, sequence, limit)),
    latest: () => guarded(() => latestSequence(db)),
    attachments: (id) => guarded(() => attachmentsOf(db, id)),
    picture: (id, nameOrHash) => guarded(() => pictureOf(db, id, nameOrHash)),
    attach: (id, picture, by) => writing(({ transaction }) => attachPicture(transaction, id, picture, by)),
    detach: (id, nameOrHash) => writing(({ transaction }) => detachPicture(transaction, id, nameOrHash)),
    check: () => guarded(async () => [...(await database.ownCheck()), ...(await checkContents(database))]),
    backup: (file) => writeBackup(database, file),
    close: () => database.close(),
  };
}

async function readCase(db: Kysely<Tables>, id: string): Promise<Read> {
  const row = await db
    .selectFrom("cases")
    .innerJoin("revisions", (join) => join.onRef("revisions.case_id", "=", "cases.id").onRef("revisions.revision", "=", "cases.revision"))
    .selectAll("revisions")
    .select("cases.removed")
    .where("cases.id", "=", id)
    .executeTakeFirst();
  if (row === undefined) return { is: "unknown" };
  return row.removed === 1 ? { is: "put-away", revision: row.revision } : { is: "held", held: heldOf(row) };
}

async function historyOf(db: Kysely<Tables>, id: string): Promise<CaseHistory | null> {
  if ((await rowOf(db, id)) === null) return null;
  const rows = await db
    .selectFrom("revisions")
    .select(["revision", "saved_at", "saved_by", "kind"])
    .where("case_id", "=", id)
    .orderBy("revision")
    .execute();
  return { id, revisions: rows.map(revisionOf) };
}

async function keptRevision(db: Kysely<Tables>, id: string, revision: number): Promise<KeptRevision | null> {
  const row = await keptRow(db, id, revision);
  return row === null ? null : { revision: revisionOf(row), document: documentOf(row) };
}

async function changesAfter(db: Kysely<Tables>, sequence: number, limit: number): Promise<readonly Change[]> {
  const rows = await db
    .selectFrom("revisions")
    .select(["case_id", "revision", "sequence", "kind", "saved_by"])
    .where("sequence", ">", sequence)
    .where("kind", "!=", "set-aside")
    .orderBy("sequence")
    .limit(limit)
    .execute();
  return rows.map((row) => ({
    sequence: row.sequence,
    event: { id: row.case_id, revision: row.revision, savedBy: row.saved_by, kind: row.kind === "removed" ? "removed" : "saved" },
  }));
}

async function latestSequence(db: Kysely<Tables>): Promise<number> {
  const { value } = await db.selectFrom("counter").select("value").where("name", "=", "sequence").executeTakeFirstOrThrow();
  return value;
}
