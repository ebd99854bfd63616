import type { Kysely, Transaction } from "kysely";
import type { Tables } from "../schema/tables.js";
import { searchWords } from "../search/search-words.js";
import { CASE_COLUMNS } from "../sql/case-columns.js";
import { inTransaction } from "../sql/in-transaction.js";
import { documentOf } from "../sql/read-rows.js";
import { atOneMoment } from "./at-one-moment.js";
import type { Database } from "./database.js";

/** Rows are carried so many at a time. */
const PAGE = 200;

/**
 * Copies everything from one database to an empty one, whatever their engines: cases, their whole history, pictures, and the counter of changes. What is read is
 * one moment of the source, however much is saved meanwhile; what is written is there whole or not at all.
 */
export async function copyDatabase(from: Database, to: Database): Promise<void> {
  await atOneMoment(from, (source) => inTransaction(to.db, (target) => copyAll(source, target, to)));
}

async function copyAll(source: Transaction<Tables>, target: Transaction<Tables>, to: Database): Promise<void> {
  const { value } = await source.selectFrom("counter").select("value").where("name", "=", "sequence").executeTakeFirstOrThrow();
  await target.updateTable("counter").set({ value }).where("name", "=", "sequence").execute();
  await copyCases(source, target, to);
  for await (const row of bySequence(source)) await target.insertInto("revisions").values(row).execute();
  for (const { hash } of await source.selectFrom("pictures").select("hash").orderBy("hash").execute()) {
    const picture = await source.selectFrom("pictures").selectAll().where("hash", "=", hash).executeTakeFirstOrThrow();
    await target.insertInto("pictures").values(picture).execute();
  }
  for (const row of await source.selectFrom("attachments").selectAll().execute())
    await target.insertInto("attachments").values(row).execute();
}

async function copyCases(source: Transaction<Tables>, target: Transaction<Tables>, to: Database): Promise<void> {
  let after = 0;
  for (;;) {
    const rows = await source
      .selectFrom("cases")
      .innerJoin("revisions", (join) => join.onRef("revisions.case_id", "=", "cases.id").onRef("revisions.revision", "=", "cases.revision"))
      .select(CASE_COLUMNS)
      .select("revisions.document")
      .where("cases.sequence", ">", after)
      .orderBy("cases.sequence")
      .limit(PAGE)
      .execute();
    const last = rows.at(-1);
    if (last === undefined) return;
    for (const { document, ...row } of rows) {
      const words = searchWords(documentOf({ document }));
      await target
        .insertInto("cases")
        .values({ ...row, ...to.search.columns(words) })
        .execute();
      await to.search.index(target, { id: row.id, sequence: row.sequence, previous: null, removed: row.removed, words });
    }
    after = last.sequence;
  }
}

async function* bySequence(source: Kysely<Tables>) {
  let after = 0;
  for (;;) {
    const rows = await source.selectFrom("revisions").selectAll().where("sequence", ">", after).orderBy("sequence").limit(PAGE).execute();
    const last = rows.at(-1);
    if (last === undefined) return;
    yield* rows;
    after = last.sequence;
  }
}
