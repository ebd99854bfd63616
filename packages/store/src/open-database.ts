import type { Database } from "./database/database.js";

/** A file of its own, or a PostgreSQL server by its address, `postgres://user@host/name`. */
export type StoreLocation = { readonly file: string } | { readonly address: string };

/** Each driver is loaded only where it is used. Throws a StoreFault. */
export async function openDatabase(location: StoreLocation): Promise<Database> {
  if ("address" in location) {
    const { openPostgres } = await import("./database/postgres-database.js");
    return openPostgres(location.address);
  }
  const { prepareFile } = await import("./database/prepare-file.js");
  await prepareFile(location.file);
  const { openSqlite } = await import("./database/sqlite-database.js");
  return openSqlite(location.file);
}
