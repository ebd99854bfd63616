import { link, open, rm } from "node:fs/promises";
import type { Database } from "../database/database.js";
import { sqliteFault } from "../faults/sqlite-fault.js";
import { StoreFault } from "../faults/store-fault.js";
import { checkContents } from "../sql/check-contents.js";

/** What SQLite may leave beside a file. */
const BESIDE = ["", "-wal", "-shm", "-journal"];

/** See CaseStore.backup. The copy is checked before it gets its name, so that a file by that name is a backup that can be restored. */
export async function writeBackup(database: Database, file: string): Promise<void> {
  const unfinished = `${file}.unfinished`;
  const clear = (): Promise<unknown> => Promise.all(BESIDE.map((ending) => rm(unfinished + ending, { force: true })));
  try {
    await clear();
    // SQLite takes an empty file for a new database; this one is for this user alone, as what it is made from.
    await (await open(unfinished, "wx", 0o600)).close();
    try {
      await database.copyTo(unfinished);
    } catch (error) {
      throw isOfFile(error) ? sqliteFault(error, file) : database.faultOf(error);
    }
    await check(unfinished, file);
    await synchronise(unfinished);
    // Unlike renaming, this fails where the name is taken.
    await link(unfinished, file);
  } catch (error) {
    throw sqliteFault(error, file);
  } finally {
    await clear();
  }
}

/** Whether the file that is written failed, and not the database that is read. */
const isOfFile = (error: unknown): boolean => /^SQLITE_|^E[A-Z]+$/.test(String((error as { readonly code?: unknown } | null)?.code ?? ""));

async function check(copy: string, file: string): Promise<void> {
  const { openSqlite } = await import("../database/sqlite-database.js");
  const database = openSqlite(copy);
  try {
    const damage = [...(await database.ownCheck()), ...(await checkContents(database))];
    if (damage.length > 0) throw new StoreFault("database-damaged", file, { cause: damage });
  } finally {
    await database.close();
  }
}

async function synchronise(file: string): Promise<void> {
  const handle = await open(file, "r+");
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}
