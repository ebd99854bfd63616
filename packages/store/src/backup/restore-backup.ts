import { existsSync } from "node:fs";
import { copyDatabase } from "../database/copy-database.js";
import type { Database } from "../database/database.js";
import { StoreFault } from "../faults/store-fault.js";
import { holdStore } from "../hold-store.js";
import { openDatabase, type StoreLocation } from "../open-database.js";
import { migrate } from "../schema/migrate.js";

export type Restoring = { readonly ok: true; readonly cases: number } | { readonly ok: false; readonly why: "not-empty" };

/**
 * Puts a backup into a store in which nothing was ever saved, of either engine, and that no server serves. Throws a StoreFault, with the backup's name where the
 * backup is at fault.
 */
export async function restoreBackup(file: string, location: StoreLocation): Promise<Restoring> {
  // SQLite would make an empty one.
  if (!existsSync(file)) throw new StoreFault("file-missing", file);
  const letGo = await holdStore(location);
  try {
    const { openSqlite } = await import("../database/sqlite-database.js");
    return await opened(openSqlite(file), async (backup) => opened(await openDatabase(location), (target) => fill(backup, target)));
  } finally {
    letGo();
  }
}

async function fill(backup: Database, target: Database): Promise<Restoring> {
  try {
    const { value } = await target.db.selectFrom("counter").select("value").executeTakeFirstOrThrow();
    if (value > 0) return { ok: false, why: "not-empty" };
    await copyDatabase(backup, target);
    const { cases } = await target.db
      .selectFrom("cases")
      .select((select) => select.fn.countAll<number | string>().as("cases"))
      .executeTakeFirstOrThrow();
    return { ok: true, cases: Number(cases) };
  } catch (error) {
    throw target.faultOf(error);
  }
}

async function opened<Answer>(database: Database, work: (database: Database) => Promise<Answer>): Promise<Answer> {
  try {
    await migrate(database);
    return await work(database);
  } finally {
    await database.close();
  }
}
