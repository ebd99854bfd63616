import { Migrator } from "kysely";
import type { Database } from "../database/database.js";
import { StoreFault } from "../faults/store-fault.js";
import { migrationsFor } from "./migrations.js";

/** Brings a database to the newest form; one that a newer program has changed is refused untouched. Throws a StoreFault. */
export async function migrate(database: Database): Promise<void> {
  const migrations = migrationsFor(database);
  try {
    const unknown = (await appliedTo(database)).filter((name) => !Object.hasOwn(migrations, name));
    if (unknown.length > 0) throw new StoreFault("database-newer", database.place);
    const migrator = new Migrator({ db: database.db, provider: { getMigrations: async () => migrations } });
    const { error } = await migrator.migrateToLatest();
    if (error !== undefined) throw error;
  } catch (error) {
    throw database.faultOf(error);
  }
}

/** Names of the steps that the database has behind it; none where it is empty. */
async function appliedTo({ db }: Database): Promise<readonly string[]> {
  const tables = await db.introspection.getTables({ withInternalKyselyTables: true });
  if (!tables.some(({ name }) => name === "kysely_migration")) return [];
  const rows = await db.withTables<{ kysely_migration: { name: string } }>().selectFrom("kysely_migration").select("name").execute();
  return rows.map(({ name }) => name);
}
