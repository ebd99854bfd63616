import { sql } from "kysely";
import { CASE_COLUMNS } from "../sql/case-columns.js";
import type { SearchIndex } from "./search-index.js";

/** Stands among the words of a case that was put away. Longer than any word that is kept or asked for, so that it is none. */
const PUT_AWAY = `put${"away".repeat(12)}`;

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
  columns: () => ({}),
  index: async (transaction, { sequence, previous, removed, words }) => {
    if (previous !== null) await sql`delete from case_words where rowid = ${previous}`.execute(transaction);
    const kept = removed === 1 ? [PUT_AWAY, ...words] : words;
    await sql`insert into case_words (rowid, words) values (${sequence}, ${kept.join(" ")})`.execute(transaction);
  },
  find: (db, { words, removed, before, limit }) => {
    const asked = [...(removed === 1 ? [`"${PUT_AWAY}"`] : []), ...words.map((word) => `"${word}"*`)].join(" ");
    return (
      db
        .withTables<{ case_words: { rowid: number } }>()
        .selectFrom("case_words")
        // In SQLite a cross join keeps the order of its tables: the index is walked, and each hit looked up (sqlite.org/optoverview.html).
        .crossJoin("cases")
        .select(CASE_COLUMNS)
        .whereRef("cases.sequence", "=", "case_words.rowid")
        .where(sql<boolean>`case_words match ${asked}`)
        .where("case_words.rowid", "<", before)
        .where("cases.removed", "=", removed)
        .orderBy("case_words.rowid", "desc")
        .limit(limit)
        .execute()
    );
  },
};
