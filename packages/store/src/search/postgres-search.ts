import { sql } from "kysely";
import type { SearchIndex } from "./search-index.js";

/** PostgreSQL's word vectors, built from our own words so that no dictionary changes them. */
export const postgresSearch: SearchIndex = {
  create: async (db) => {
    await sql`alter table cases add column words tsvector not null default ''::tsvector`.execute(db);
    await sql`create index cases_words on cases using gin (words)`.execute(db);
  },
  index: async (transaction, { id, words }) => {
    await sql`update cases set words = array_to_tsvector(${[...words]}::text[]) where id = ${id}`.execute(transaction);
  },
  narrow: (query, words) => query.where(sql<boolean>`cases.words @@ ${words.map((word) => `'${word}':*`).join(" & ")}::tsquery`),
};
