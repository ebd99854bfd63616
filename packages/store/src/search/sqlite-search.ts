import { sql } from "kysely";
import type { SearchIndex } from "./search-index.js";

/**
 * SQLite's full-text index, which holds no text of its own. Its row number is the case's change number: hits then come newest first without sorting, and a
 * page of a word that every case has costs as little as a page of a rare one.
 */
export const sqliteSearch: SearchIndex = {
  create: async (db) => {
    await sql`create virtual table case_words using fts5(words, content='', contentless_delete=1, tokenize='unicode61 remove_diacritics 0', prefix='1 2 3')`.execute(
      db,
    );
  },
  index: async (transaction, { sequence, previous, words }) => {
    if (previous !== null) await sql`delete from case_words where rowid = ${previous}`.execute(transaction);
    await sql`insert into case_words (rowid, words) values (${sequence}, ${words.join(" ")})`.execute(transaction);
  },
  narrow: (query, words) =>
    query.where(
      "cases.sequence",
      "in",
      sql<number>`(select rowid from case_words where case_words match ${words.map((word) => `"${word}"*`).join(" ")})`,
    ),
};
