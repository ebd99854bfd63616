import { createHash } from "node:crypto";
import { existsSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { CaseStore } from "../case-store.js";
import type { StoreLocation } from "../open-database.js";
import { openStore } from "../open-store.js";
import { at, PNG, sampleCase } from "../sample-cases.test-support.js";
import { type EmptyDatabases, emptyDatabases, temporaryFolder } from "../test-databases.test-support.js";
import { restoreBackup } from "./restore-backup.js";

const folder = temporaryFolder();
let databases: EmptyDatabases;
beforeAll(async () => {
  databases = await emptyDatabases();
}, 60_000);
afterAll(async () => {
  await databases.stop();
  folder.remove();
});

let files = 0;
const file = (): string => join(folder.path, `store-${++files}.sqlite`);
const ENGINES: readonly (readonly [string, () => Promise<StoreLocation>])[] = [
  ["SQLite", async () => ({ file: file() })],
  ["PostgreSQL", async () => ({ address: await databases.next() })],
];

async function fill(store: CaseStore): Promise<void> {
  await store.create(sampleCase("plain", { notes: "cuña \u0000" }), at(0));
  await store.save(sampleCase("plain", { notes: "again" }), 1, at(1));
  await store.save(sampleCase("plain", { notes: "set aside" }), 1, at(2, "Office"));
  await store.create(sampleCase("away"), at(3));
  await store.putAway("away", 1, at(4));
  await store.attach(
    "plain",
    { name: "a.png", hash: createHash("sha256").update(PNG).digest("hex"), type: "image/png", content: PNG },
    at(5),
  );
}

/** Everything that can be asked of a store. */
const everything = async (store: CaseStore) => ({
  latest: await store.latest(),
  held: await store.list({ words: "", limit: 99, after: null, putAway: false }),
  away: await store.list({ words: "away", limit: 99, after: null, putAway: true }),
  found: await store.list({ words: "again", limit: 99, after: null, putAway: false }),
  plain: await store.read("plain"),
  history: [await store.history("plain"), await store.history("away")],
  first: await store.revision("plain", 1),
  setAside: await store.revision("plain", 3),
  picture: [...((await store.picture("plain", "a.png"))?.content ?? [])],
  damage: await store.check(),
});

describe.each(ENGINES)("a backup of %s", (_, location) => {
  test.each(ENGINES)("restored into %s is the same store", async (_engine, target) => {
    const store = await openStore(await location());
    await fill(store);
    const backup = file();
    await store.backup(backup);
    const into = await target();
    expect(await restoreBackup(backup, into)).toEqual({ ok: true, cases: 2 });
    const restored = await openStore(into);
    expect(await everything(restored)).toEqual(await everything(store));
    // It goes on where the old one stood.
    expect(await restored.save(sampleCase("plain", { notes: "onward" }), 2, at(9))).toMatchObject({ ok: true, revision: { revision: 4 } });
    expect(await restoreBackup(backup, into)).toEqual({ ok: false, why: "not-empty" });
    await restored.close();
    await store.close();
  });

  test("is a store by itself, and one moment of what goes on", async () => {
    const store = await openStore(await location());
    for (let k = 0; k < 40; k++) await store.create(sampleCase(`case-${k}`), at(k));
    const backup = file();
    const saving = Promise.all(
      Array.from({ length: 40 }, (_none, k) => store.save(sampleCase(`case-${k}`, { notes: "later" }), 1, at(60))),
    );
    await store.backup(backup);
    await saving;
    const copy = await openStore({ file: backup });
    expect(await copy.check()).toEqual([]);
    expect((await copy.list({ words: "case", limit: 99, after: null, putAway: false })).cases).toHaveLength(40);
    await copy.close();
    await store.close();
  });

  test("never takes the place of a file, and leaves nothing half done", async () => {
    const store = await openStore(await location());
    await fill(store);
    const taken = file();
    writeFileSync(taken, "precious");
    await expect(store.backup(taken)).rejects.toMatchObject({ code: "file-exists" });
    await expect(store.backup(join(folder.path, "no-such-folder", "b.sqlite"))).rejects.toMatchObject({ name: "StoreFault" });
    expect(readdirSync(folder.path).filter((name) => name.includes("unfinished"))).toEqual([]);
    await store.close();
  });
});

test("what is no backup is refused", async () => {
  const text = file();
  writeFileSync(text, "not a database at all, but long enough to look like one".repeat(50));
  await expect(restoreBackup(text, { file: file() })).rejects.toMatchObject({ code: "not-a-database", place: text });
  const missing = file();
  await expect(restoreBackup(missing, { file: file() })).rejects.toMatchObject({ name: "StoreFault" });
  expect(existsSync(missing)).toBe(false);
});
