import { statSync } from "node:fs";
import BetterSqlite3 from "better-sqlite3";
import { Kysely, SqliteDialect, sql } from "kysely";
import { sqliteFault } from "../faults/sqlite-fault.js";
import { StoreFault } from "../faults/store-fault.js";
import type { Tables } from "../schema/tables.js";
import { sqliteSearch } from "../search/sqlite-search.js";
import type { Database } from "./database.js";

/** How long a write waits for another program, a backup for instance, before it gives up. */
const BUSY_TIMEOUT_MS = 5000;

/**
 * Opens or makes a SQLite file. A write that was acknowledged is on the disk: the log is synchronised at every commit (sqlite.org/pragma.html, synchronous).
 * Throws a StoreFault.
 */
export function openSqlite(file: string): Database {
  try {
    const connection = new BetterSqlite3(file, { timeout: BUSY_TIMEOUT_MS });
    try {
      connection.pragma("journal_mode = WAL");
      connection.pragma("synchronous = FULL");
      connection.pragma("foreign_keys = ON");
    } catch (error) {
      connection.close();
      throw error;
    }
    const opened = placeOf(file);
    const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: connection }) });
    return {
      engine: "sqlite",
      place: file,
      db,
      bytesType: "blob",
      search: sqliteSearch,
      faultOf: (error) => sqliteFault(error, file),
      ownCheck: async () => {
        const { rows } = await sql<{ readonly integrity_check: string }>`pragma integrity_check`.execute(db);
        return rows.map((row) => row.integrity_check).filter((line) => line !== "ok");
      },
      checkPlace: () => {
        if (placeOf(file) !== opened) throw new StoreFault("file-missing", file);
      },
      copyTo: async (copy) => {
        await connection.backup(copy);
      },
      close: () => db.destroy(),
    };
  } catch (error) {
    throw sqliteFault(error, file);
  }
}

/** Which file it is, whatever its name; null where there is none. With a write-ahead log SQLite itself does not look again. */
function placeOf(file: string): string | null {
  const found = statSync(file, { bigint: true, throwIfNoEntry: false });
  return found === undefined ? null : `${found.dev} ${found.ino}`;
}
