import type { Kysely, SelectQueryBuilder, Transaction } from "kysely";
import type { Tables } from "../schema/tables.js";

export type CaseQuery<Out> = SelectQueryBuilder<Tables, "cases", Out>;

/** The words of a case, under the number of its latest change. */
export interface IndexedCase {
  readonly id: string;
  readonly sequence: number;
  /** The number that its words stood under until now; null for a new case. */
  readonly previous: number | null;
  /** Words as `searchWords` makes them. */
  readonly words: readonly string[];
}

/**
 * How an engine finds cases by words. Which words a case has and what counts as a hit is the same on every engine (see searchWords): a case is found when each
 * word asked for begins one of its words. Only the index differs.
 */
export interface SearchIndex {
  /** Made once, in the first migration, after the table of cases. */
  readonly create: (db: Kysely<unknown>) => Promise<void>;
  /** In the transaction that changed the case. */
  readonly index: (transaction: Transaction<Tables>, entry: IndexedCase) => Promise<void>;
  /** Narrows a query for cases; newest first stays possible without reading all hits. */
  readonly narrow: <Out>(query: CaseQuery<Out>, words: readonly string[]) => CaseQuery<Out>;
}
