import { sql } from "kysely";
import { CASE_COLUMNS } from "../sql/case-columns.js";
import type { SearchIndex } from "./search-index.js";

/**
 * So many of the newest cases are read through before the index is asked. The planner cannot know how many cases a beginning of a word finds: left to itself it
 * reads through all of them for a word that none has, or sorts all of them for a word that each has.
 */
const NEWEST = 1500;

/** PostgreSQL's word vectors, built from our own words so that no dictionary changes them. */
export const postgresSearch: SearchIndex = {
  create: async (db) => {
    await sql`alter table cases add column words tsvector not null default ''::tsvector`.execute(db);
    // Without a list of rows that wait to be indexed, which every search would have to read through.
    await sql`create index cases_words on cases using gin (words) with (fastupdate = off)`.execute(db);
  },
  // In the row itself: written with it, and never a second time.
  columns: (words) => ({ words: sql`array_to_tsvector(${[...words]}::text[])` }) as object,
  index: async () => undefined,
  find: async (db, { words, removed, before, limit }) => {
    const asked = sql`${words.map((word) => `'${word}':*`).join(" & ")}::tsquery`;
    const newest = db
      .selectFrom("cases")
      .selectAll("cases")
      .select(sql<boolean>`cases.words @@ ${asked}`.as("hit"))
      .where("removed", "=", removed)
      .where("sequence", "<", before)
      .orderBy("sequence", "desc")
      .limit(NEWEST);
    const near = await db.selectFrom(newest.as("cases")).select(CASE_COLUMNS).where("hit", "=", true).limit(limit).execute();
    if (near.length >= limit) return near;
    return db
      .with(
        (hits) => hits("cases").materialized(),
        (hits) =>
          hits
            .selectFrom("cases")
            .select(CASE_COLUMNS)
            .where(sql<boolean>`cases.words @@ ${asked}`)
            .where("cases.removed", "=", removed)
            .where("cases.sequence", "<", before),
      )
      .selectFrom("cases")
      .select(CASE_COLUMNS)
      .orderBy("cases.sequence", "desc")
      .limit(limit)
      .execute();
  },
};
