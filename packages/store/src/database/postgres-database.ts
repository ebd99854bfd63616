import { Kysely, PostgresDialect } from "kysely";
import pg from "pg";
import { postgresFault } from "../faults/postgres-fault.js";
import { migrate } from "../schema/migrate.js";
import type { Tables } from "../schema/tables.js";
import { postgresSearch } from "../search/postgres-search.js";
import { copyDatabase } from "./copy-database.js";
import type { Database } from "./database.js";

const CONNECTIONS = 8;
const CONNECT_TIMEOUT_MS = 5000;
const STATEMENT_TIMEOUT_MS = 30_000;

/** The address as it may be shown. */
export function withoutPassword(address: string): string {
  try {
    const url = new URL(address);
    url.password = "";
    url.searchParams.delete("password");
    return url.href;
  } catch {
    return "postgres";
  }
}

/** Opens a PostgreSQL database by its address. A connection that was lost is replaced at the next question. */
export function openPostgres(address: string): Database {
  const place = withoutPassword(address);
  const pool = new pg.Pool({
    connectionString: address,
    max: CONNECTIONS,
    connectionTimeoutMillis: CONNECT_TIMEOUT_MS,
    statement_timeout: STATEMENT_TIMEOUT_MS,
    application_name: "halfturn",
  });
  // A connection that breaks while nobody uses it is told here; the pool has dropped it already, and the next question opens another.
  pool.on("error", () => undefined);
  // And one that breaks between two questions of a transaction here; the next question of that transaction fails and says so.
  pool.on("connect", (client) => client.on("error", () => undefined));
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  const database: Database = {
    engine: "postgres",
    place,
    db,
    bytesType: "bytea",
    search: postgresSearch,
    faultOf: (error) => postgresFault(error, place),
    ownCheck: async () => [],
    checkPlace: () => undefined,
    copyTo: (file) => copyToSqlite(database, file),
    close: () => db.destroy(),
  };
  return database;
}

async function copyToSqlite(database: Database, file: string): Promise<void> {
  const { openSqlite } = await import("./sqlite-database.js");
  const copy = openSqlite(file);
  try {
    await migrate(copy);
    await copyDatabase(database, copy);
  } finally {
    await copy.close();
  }
}
