import { createHash } from "node:crypto";
import type { Kysely } from "kysely";
import type { Damage } from "../case-store.js";
import { atOneMoment } from "../database/at-one-moment.js";
import type { Database } from "../database/database.js";
import type { Tables } from "../schema/tables.js";
import { hashOf } from "./changes.js";

/** Documents are read so many at a time. */
const PAGE = 200;

/** Every document and picture against its hash, every case against its history, the counter against all. */
export const checkContents = (database: Pick<Database, "db" | "engine">): Promise<Damage> =>
  atOneMoment(database, async (db) => [
    ...(await documentDamage(db)),
    ...(await pictureDamage(db)),
    ...(await lineDamage(db)),
    ...(await counterDamage(db)),
  ]);

async function documentDamage(db: Kysely<Tables>): Promise<Damage> {
  const damage: string[] = [];
  let after = 0;
  for (;;) {
    const rows = await db
      .selectFrom("revisions")
      .select(["case_id", "revision", "sequence", "document", "hash"])
      .where("sequence", ">", after)
      .orderBy("sequence")
      .limit(PAGE)
      .execute();
    const last = rows.at(-1);
    if (last === undefined) return damage;
    for (const row of rows) if (hashOf(row.document) !== row.hash) damage.push(`document of ${row.case_id}, revision ${row.revision}`);
    after = last.sequence;
  }
}

async function pictureDamage(db: Kysely<Tables>): Promise<Damage> {
  const damage: string[] = [];
  for (const { hash } of await db.selectFrom("pictures").select("hash").execute()) {
    const { content } = await db.selectFrom("pictures").select("content").where("hash", "=", hash).executeTakeFirstOrThrow();
    if (createHash("sha256").update(content).digest("hex") !== hash) damage.push(`picture ${hash}`);
  }
  return damage;
}

/** A case whose current revision is missing or of another kind, or whose history has a gap. */
async function lineDamage(db: Kysely<Tables>): Promise<Damage> {
  const counted = await db
    .selectFrom("cases")
    .leftJoin("revisions", "revisions.case_id", "cases.id")
    .groupBy(["cases.id", "cases.last_revision"])
    .select((select) => [
      "cases.id",
      "cases.last_revision",
      select.fn.count<number | string>("revisions.revision").as("kept"),
      select.fn.max("revisions.revision").as("highest"),
    ])
    .execute();
  const gaps = counted.filter(({ kept, highest, last_revision }) => Number(kept) !== last_revision || Number(highest) !== last_revision);
  const current = await db
    .selectFrom("cases")
    .leftJoin("revisions", (join) => join.onRef("revisions.case_id", "=", "cases.id").onRef("revisions.revision", "=", "cases.revision"))
    .select(["cases.id", "cases.removed", "revisions.kind"])
    .execute();
  const wrong = current.filter(({ removed, kind }) => kind !== (removed === 1 ? "removed" : "saved"));
  return [...gaps.map(({ id }) => `history of ${id}`), ...wrong.map(({ id }) => `current revision of ${id}`)];
}

async function counterDamage(db: Kysely<Tables>): Promise<Damage> {
  const { value } = await db.selectFrom("counter").select("value").where("name", "=", "sequence").executeTakeFirstOrThrow();
  const { highest } = await db
    .selectFrom("revisions")
    .select((select) => select.fn.max("sequence").as("highest"))
    .executeTakeFirstOrThrow();
  return Number(highest ?? 0) <= value ? [] : ["counter of changes"];
}
