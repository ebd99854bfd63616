import { existsSync } from "node:fs";
import { mkdir, open } from "node:fs/promises";
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
  await prepare(location.file);
  const { openSqlite } = await import("./database/sqlite-database.js");
  return openSqlite(location.file);
}

/** Makes the folder and the file where there are none, for this user alone: cases name customers' vehicles. */
async function prepare(file: string): Promise<void> {
  if (existsSync(file)) return;
  try {
    await mkdir(dirname(file), { recursive: true, mode: 0o700 });
    // SQLite takes an empty file for a new database.
    await (await open(file, "a", 0o600)).close();
  } catch (error) {
    throw sqliteFault(error, file);
  }
}
