import type { Kysely, Transaction } from "kysely";
import type { CaseRow, Tables } from "../schema/tables.js";

/** The words of a case, under the number of its latest change. */
export interface IndexedCase {
  readonly id: string;
  readonly sequence: number;
  /** The number that its words stood under until now; null for a new case. */
  readonly previous: number | null;
  readonly removed: 0 | 1;
  /** Words as `searchWords` makes them. */
  readonly words: readonly string[];
}

export interface Search {
  /** Words as `askedWords` makes them, at least one. */
  readonly words: readonly string[];
  readonly removed: 0 | 1;
  /** Only cases whose latest change came before this one. */
  readonly before: number;
  readonly limit: number;
}

/**
 * How an engine finds cases by words. Which words a case has and what counts as a hit is the same on every engine (see searchWords): a case is found when each
 * word asked for begins one of its words. Only the index differs.
 */
export interface SearchIndex {
  /** Made once, in the first migration, after the table of cases. */
  readonly create: (db: Kysely<unknown>) => Promise<void>;
  /** What the engine keeps of the words in the case's own row, if anything: columns beside those that every engine has. */
  readonly columns: (words: readonly string[]) => Partial<CaseRow>;
  /** What it keeps elsewhere; in the transaction that changed the case. */
  readonly index: (transaction: Transaction<Tables>, entry: IndexedCase) => Promise<void>;
  /** Newest change first. A word of every case must cost no more than a rare one. */
  readonly find: (db: Kysely<Tables>, search: Search) => Promise<readonly CaseRow[]>;
}
