import type { CaseList } from "@halfturn/exchange";
import type { Kysely } from "kysely";
import { summaryOf } from "../case/case-line.js";
import type { ListQuery } from "../case-store.js";
import type { Tables } from "../schema/tables.js";
import type { SearchIndex } from "../search/search-index.js";
import { askedWords } from "../search/search-words.js";
import { CASE_COLUMNS } from "./case-columns.js";

const WHOLE_NUMBER = /^\d{1,9}$/;
/** Above every change number there can be. */
const NONE_YET = 2 ** 31 - 1;

/** A page of the list, newest change first. `after` is the change number of the last line shown; one that is no number is as good as none. */
export async function listCases(db: Kysely<Tables>, search: SearchIndex, { words, limit, after, putAway }: ListQuery): Promise<CaseList> {
  const asked = askedWords(words);
  // Signs only: nothing can be found by them.
  if (asked.length === 0 && words.trim() !== "") return { cases: [], next: null };
  const removed = putAway ? 1 : 0;
  const before = after !== null && WHOLE_NUMBER.test(after) ? Number(after) : NONE_YET;
  const rows = await (asked.length > 0
    ? search.find(db, { words: asked, removed, before, limit: limit + 1 })
    : db
        .selectFrom("cases")
        .select(CASE_COLUMNS)
        .where("cases.removed", "=", removed)
        .where("cases.sequence", "<", before)
        .orderBy("cases.sequence", "desc")
        .limit(limit + 1)
        .execute());
  const shown = rows.slice(0, limit);
  const last = shown.at(-1);
  return { cases: shown.map(summaryOf), next: rows.length > limit && last !== undefined ? String(last.sequence) : null };
}
