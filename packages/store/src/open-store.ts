import { existsSync } from "node:fs";
import { mkdir } from "node:fs/promises";
import { dirname } from "node:path";
import type { CaseStore } from "./case-store.js";
import type { Database } from "./database/database.js";
import { sqliteFault } from "./faults/sqlite-fault.js";
import { migrate } from "./schema/migrate.js";
import { sqlCaseStore } from "./sql/sql-case-store.js";

/** A file of its own, or a PostgreSQL server by its address, `postgres://user@host/name`. */
export type StoreLocation = { readonly file: string } | { readonly address: string };

/** Opens a store, makes it where there is none, and brings it up to date. Throws a StoreFault. */
export async function openStore(location: StoreLocation): Promise<CaseStore> {
  const database = await openDatabase(location);
  try {
    await migrate(database);
  } catch (error) {
    await database.close();
    throw error;
  }
  return sqlCaseStore(database);
}

/** Each driver is loaded only where it is used. */
async function openDatabase(location: StoreLocation): Promise<Database> {
  if ("address" in location) {
    const { openPostgres } = await import("./database/postgres-database.js");
    return openPostgres(location.address);
  }
  const folder = dirname(location.file);
  if (!existsSync(folder)) {
    try {
      // Cases name customers' vehicles: nobody else on the machine needs to read them.
      await mkdir(folder, { recursive: true, mode: 0o700 });
    } catch (error) {
      throw sqliteFault(error, location.file);
    }
  }
  const { openSqlite } = await import("./database/sqlite-database.js");
  return openSqlite(location.file);
}
