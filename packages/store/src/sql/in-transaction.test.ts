import { type DatabaseConnection, DummyDriver, Kysely, SqliteAdapter, SqliteIntrospector, SqliteQueryCompiler } from "kysely";
import { expect, test } from "vitest";
import type { Tables } from "../schema/tables.js";
import { inTransaction } from "./in-transaction.js";

/** A database whose disk is full when the changes are to be made final, as SQLite's write-ahead log mostly finds it; its own roll-back has happened by then. */
class FullAtCommit extends DummyDriver {
  open = 0;
  override async acquireConnection(): Promise<DatabaseConnection> {
    this.open++;
    return super.acquireConnection();
  }
  override async releaseConnection(): Promise<void> {
    this.open--;
  }
  override async commitTransaction(): Promise<void> {
    throw Object.assign(new Error("database or disk is full"), { code: "SQLITE_FULL" });
  }
  override async rollbackTransaction(): Promise<void> {
    throw new Error("cannot rollback - no transaction is active");
  }
}

const over = (driver: DummyDriver): Kysely<Tables> =>
  new Kysely<Tables>({
    dialect: {
      createAdapter: () => new SqliteAdapter(),
      createDriver: () => driver,
      createIntrospector: (db) => new SqliteIntrospector(db),
      createQueryCompiler: () => new SqliteQueryCompiler(),
    },
  });

test("a commit that fails is told as what it is, and lets the connection go", async () => {
  const driver = new FullAtCommit();
  await expect(inTransaction(over(driver), async () => "done")).rejects.toMatchObject({ code: "SQLITE_FULL" });
  expect(driver.open).toBe(0);
});

test("work that fails is told as what it is, even where the roll-back fails too", async () => {
  const driver = new FullAtCommit();
  const gone = new Error("connection terminated");
  await expect(inTransaction(over(driver), () => Promise.reject(gone))).rejects.toBe(gone);
  expect(driver.open).toBe(0);
});

test("what was done is given back once it is final", async () => {
  expect(await inTransaction(over(new DummyDriver()), async () => "done")).toBe("done");
});
