import type { Kysely } from "kysely";
import type { StoreFault } from "../faults/store-fault.js";
import type { Tables } from "../schema/tables.js";
import type { SearchIndex } from "../search/search-index.js";

/** An open database and what is particular to its engine. */
export interface Database {
  readonly engine: "sqlite" | "postgres";
  /** The file, or the address without its password. */
  readonly place: string;
  readonly db: Kysely<Tables>;
  readonly bytesType: "blob" | "bytea";
  readonly search: SearchIndex;
  readonly faultOf: (error: unknown) => StoreFault;
  /** The engine's own check of its files; a sentence of the engine for each thing wrong. */
  readonly ownCheck: () => Promise<readonly string[]>;
  /** Throws a StoreFault where what is written would go nowhere: into a file that was deleted or replaced while it was open. */
  readonly checkPlace: () => void;
  /** Copies the database, as it is at one moment, into a new SQLite file. */
  readonly copyTo: (file: string) => Promise<void>;
  readonly close: () => Promise<void>;
}
