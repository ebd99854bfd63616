import { existsSync } from "node:fs";
import { mkdir } from "node:fs/promises";
import { dirname } from "node:path";
import type { Database } from "./database/database.js";
import { sqliteFault } from "./faults/sqlite-fault.js";

/** A file of its own, or a PostgreSQL server by its address, `postgres://user@host/name`. */
export type StoreLocation = { readonly file: string } | { readonly address: string };

/** Each driver is loaded only where it is used. Throws a StoreFault. */
export async function openDatabase(location: StoreLocation): Promise<Database> {
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
