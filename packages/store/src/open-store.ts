import type { CaseStore } from "./case-store.js";
import { openDatabase, type StoreLocation } from "./open-database.js";
import { migrate } from "./schema/migrate.js";
import { sqlCaseStore } from "./sql/sql-case-store.js";

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
