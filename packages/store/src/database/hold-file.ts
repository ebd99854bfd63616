import BetterSqlite3 from "better-sqlite3";
import { sqliteFault } from "../faults/sqlite-fault.js";
import { StoreFault } from "../faults/store-fault.js";
import { closeToOthers } from "./own-file.js";
import { HOLD_ENDING } from "./store-files.js";

/** Holds `file` by a lock on an empty database beside it, which SQLite takes alike on every system. Throws a StoreFault that names `file`. */
export function holdFile(file: string): () => void {
  const beside = `${file}${HOLD_ENDING}`;
  try {
    const connection = new BetterSqlite3(beside, { timeout: 0 });
    try {
      closeToOthers(beside);
      // Nothing is ever written, so no journal needs to lie about.
      connection.pragma("journal_mode = MEMORY");
      connection.exec("BEGIN EXCLUSIVE");
    } catch (error) {
      connection.close();
      throw error;
    }
    return () => connection.close();
  } catch (error) {
    const fault = sqliteFault(error, file);
    throw fault.code === "database-busy" ? new StoreFault("store-held", file, { cause: error }) : fault;
  }
}
