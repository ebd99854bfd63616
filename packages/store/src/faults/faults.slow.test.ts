import { copyFileSync, mkdirSync, readFileSync, renameSync, statSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import BetterSqlite3 from "better-sqlite3";
import { sql } from "kysely";
import { afterAll, describe, expect, onTestFinished, test, vi } from "vitest";
import { openSqlite } from "../database/sqlite-database.js";
import { openStore } from "../open-store.js";
import { at, sampleCase } from "../sample-cases.test-support.js";
import { migrate } from "../schema/migrate.js";
import { sqlCaseStore } from "../sql/sql-case-store.js";
import { emptyDatabases, ownPostgres, runIn, temporaryFolder } from "../test-databases.test-support.js";
import { postgresFault } from "./postgres-fault.js";
import { sqliteFault } from "./sqlite-fault.js";

const PATIENCE = { timeout: 20_000, interval: 100 };

const folder = temporaryFolder();
afterAll(folder.remove);

const PICTURE = { name: "a.png", hash: "0".repeat(64), type: "image/png", content: Uint8Array.of(1) } as const;

let files = 0;
const file = (): string => join(folder.path, `fault-${++files}.sqlite`);

async function filled(): Promise<string> {
  const place = file();
  const store = await openStore({ file: place });
  for (let k = 0; k < 30; k++) await store.create(sampleCase(`case-${k}`, { notes: "words ".repeat(300) }), at(k));
  await store.close();
  return place;
}

describe("a database that another version or another hand has changed", () => {
  test.each(["sqlite", "postgres"])(
    "one of a newer program is refused and left as it is (%s)",
    async (engine) => {
      const databases = engine === "postgres" ? await emptyDatabases() : null;
      const location = databases === null ? { file: file() } : { address: await databases.next() };
      await (await openStore(location)).close();
      const insert = "insert into kysely_migration (name, timestamp) values ('9999-from-the-future', '2030-01-01')";
      if ("address" in location) await runIn(location.address, insert);
      else new BetterSqlite3(location.file).exec(insert).close();
      const bytes = () => ("file" in location ? readFileSync(location.file).toString("base64") : "");
      const before = bytes();
      await expect(openStore(location)).rejects.toMatchObject({ code: "database-newer" });
      expect(bytes()).toBe(before);
      await databases?.stop();
    },
    60_000,
  );

  test("a file that is no database is refused, and not one byte of it is changed", async () => {
    const place = file();
    writeFileSync(place, "A letter, and no database. ".repeat(300));
    const before = readFileSync(place);
    await expect(openStore({ file: place })).rejects.toMatchObject({ code: "not-a-database", place });
    expect(readFileSync(place).equals(before)).toBe(true);
  });

  test("a damaged file says so, when it is opened, read or checked", async () => {
    const place = await filled();
    const bytes = readFileSync(place);
    // Everything but the first page, which says what kind of file it is.
    bytes.fill(0xa5, 4096);
    writeFileSync(place, bytes);
    const asked = async (): Promise<unknown> => {
      const store = await openStore({ file: place });
      try {
        await store.list({ words: "", limit: 50, after: null, putAway: false });
        return await store.check();
      } finally {
        await store.close();
      }
    };
    await expect(asked()).rejects.toMatchObject({ code: "database-damaged" });
  });

  test("a file cut short says so", async () => {
    const place = await filled();
    truncateSync(place, Math.floor(statSync(place).size / 2 / 4096) * 4096);
    const store = await openStore({ file: place }).catch((error: unknown) => error);
    if (store instanceof Error) expect(store).toMatchObject({ code: "database-damaged" });
    else await expect((store as Awaited<ReturnType<typeof openStore>>).check()).resolves.not.toEqual([]);
  });

  test("a document changed behind the program's back is found by its hash", async () => {
    const place = await filled();
    new BetterSqlite3(place).exec("update revisions set document = replace(document, 'case-7', 'case-8') where case_id = 'case-7'").close();
    const store = await openStore({ file: place });
    expect(await store.check()).toEqual(["document of case-7, revision 1"]);
    await store.close();
  });

  test("a history with a gap, a case without its revision and a counter that runs behind are found", async () => {
    const place = await filled();
    const raw = new BetterSqlite3(place);
    raw.pragma("foreign_keys = OFF");
    raw.exec(
      "delete from revisions where case_id = 'case-3'; update cases set removed = 1 where id = 'case-4'; update counter set value = 5",
    );
    raw.close();
    const store = await openStore({ file: place });
    expect(await store.check()).toEqual([
      "history of case-3",
      "current revision of case-3",
      "current revision of case-4",
      "counter of changes",
    ]);
    await store.close();
  });
});

describe("a disk that does not do its part", () => {
  test("a full disk fails the save, loses nothing, and works again once there is room", async () => {
    const place = await filled();
    const database = openSqlite(place);
    await migrate(database);
    const store = sqlCaseStore(database);
    const { rows } = await sql<{ readonly page_count: number }>`pragma page_count`.execute(database.db);
    const pages = rows[0]?.page_count ?? 0;
    const limitPages = (most: number) => sql`pragma max_page_count = ${sql.lit(most)}`.execute(database.db);
    // SQLite fails at its own limit of pages exactly as on a full disk: with SQLITE_FULL (sqlite.org/pragma.html, max_page_count).
    await limitPages(pages + 2);
    const large = { notes: "no room ".repeat(2400) };
    let refused = 0;
    for (let k = 0; k < 10; k++) {
      const made = await store.create(sampleCase(`full-${k}`, large), at(k)).catch((error: unknown) => error);
      if (made instanceof Error) {
        expect(made).toMatchObject({ code: "disk-full" });
        refused++;
      } else expect((await store.read(`full-${k}`)).is).toBe("held");
    }
    expect(refused).toBeGreaterThan(5);
    expect(await store.check()).toEqual([]);
    await limitPages(1_000_000);
    expect(await store.create(sampleCase("room", large), at(0))).toMatchObject({ ok: true });
    await store.close();
  });

  test("a database that may only be read is said, is read, and is written again once it may be", async () => {
    const database = openSqlite(await filled());
    await migrate(database);
    const store = sqlCaseStore(database);
    // Fails every write with the code of a read-only disk (sqlite.org/pragma.html, query_only).
    await sql`pragma query_only = on`.execute(database.db);
    await expect(store.create(sampleCase("no"), at(0))).rejects.toMatchObject({ code: "read-only" });
    expect((await store.read("case-1")).is).toBe("held");
    await sql`pragma query_only = off`.execute(database.db);
    expect((await store.create(sampleCase("yes"), at(0))).ok).toBe(true);
    await store.close();
  });

  test.each(["deleted", "replaced"])(
    "a file that is %s while it is open takes no save that would be lost, and goes on once it is back",
    async (how) => {
      const place = await filled();
      const store = await openStore({ file: place });
      renameSync(place, `${place}.moved`);
      if (how === "replaced") copyFileSync(`${place}.moved`, place);
      await expect(store.create(sampleCase("nowhere"), at(0))).rejects.toMatchObject({ code: "file-missing", place });
      await expect(store.attach("case-1", PICTURE, at(0))).rejects.toMatchObject({ code: "file-missing" });
      renameSync(`${place}.moved`, place);
      expect((await store.read("nowhere")).is).toBe("unknown");
      expect((await store.create(sampleCase("back"), at(1))).ok).toBe(true);
      await store.close();
    },
  );

  test("a path that cannot be made is said", async () => {
    const place = file();
    writeFileSync(place, "");
    await expect(openStore({ file: join(place, "below", "a.sqlite") })).rejects.toMatchObject({ code: "folder-missing" });
    mkdirSync(join(folder.path, "is-a-folder"));
    await expect(openStore({ file: join(folder.path, "is-a-folder") })).rejects.toMatchObject({ code: "not-a-file" });
    await expect(openStore({ file: join(place, "a.sqlite") })).rejects.toMatchObject({ code: "not-a-folder", place });
  });

  test("a database held by another program is waited for, then said, and the save can be repeated", async () => {
    const place = await filled();
    const store = await openStore({ file: place });
    const other = new BetterSqlite3(place);
    other.exec("begin immediate");
    await expect(store.create(sampleCase("busy"), at(0))).rejects.toMatchObject({ code: "database-busy" });
    other.exec("commit");
    other.close();
    expect((await store.create(sampleCase("busy"), at(0))).ok).toBe(true);
    await store.close();
  }, 20_000);
});

describe("PostgreSQL that is not there", () => {
  test("no server, a wrong name: each is said, without the password", async () => {
    const databases = await emptyDatabases();
    const address = new URL(await databases.next());
    address.password = "secret";
    const nowhere = new URL(address);
    nowhere.port = "1";
    for (const [tried, code] of [
      [nowhere.href, "database-unreachable"],
      [address.href.replace(/\/[^/]+$/, "/no_such_database"), "database-refused"],
    ] as const) {
      const fault = await openStore({ address: tried }).catch((error: unknown) => error as Error);
      expect(fault).toMatchObject({ code });
      expect((fault as { readonly place: string }).place).not.toContain("secret");
    }
    await databases.stop();
  }, 60_000);

  test("gone and back: questions fail meanwhile and are answered again without a restart", async () => {
    const server = await ownPostgres();
    onTestFinished(server.stop);
    const store = await openStore({ address: server.address });
    onTestFinished(store.close);
    await store.create(sampleCase("before"), at(0));
    await server.kill();
    // The killed server's own processes answer a moment longer.
    await vi.waitFor(() => expect(store.read("before")).rejects.toMatchObject({ code: "database-unreachable" }), PATIENCE);
    await expect(store.create(sampleCase("meanwhile"), at(1))).rejects.toMatchObject({ name: "StoreFault" });
    // And what they left in memory goes with the last of them.
    await vi.waitFor(() => server.start(), PATIENCE);
    expect((await store.read("before")).is).toBe("held");
    expect((await store.create(sampleCase("after"), at(2))).ok).toBe(true);
  }, 60_000);
});

test.each([
  ["SQLITE_FULL", "disk-full"],
  ["SQLITE_READONLY_DBMOVED", "read-only"],
  ["SQLITE_CANTOPEN", "no-permission"],
  ["SQLITE_IOERR_WRITE", "database-failed"],
  ["EROFS", "read-only"],
  [undefined, "database-failed"],
])("SQLite's %s is %s", (code, expected) => {
  expect(sqliteFault({ code }, "place").code).toBe(expected);
});

test.each([
  ["53100", "disk-full"],
  ["28P01", "database-refused"],
  ["3D000", "database-refused"],
  ["57P03", "database-unreachable"],
  ["40001", "database-busy"],
  ["25006", "read-only"],
  ["XX001", "database-damaged"],
  ["ECONNREFUSED", "database-unreachable"],
  ["22P02", "database-failed"],
])("PostgreSQL's %s is %s", (code, expected) => {
  expect(postgresFault({ code }, "place").code).toBe(expected);
});
