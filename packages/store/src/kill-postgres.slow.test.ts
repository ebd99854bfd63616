import pg from "pg";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { CaseStore } from "./case-store.js";
import { killWhileSaving } from "./kill-harness.test-support.js";
import { openStore } from "./open-store.js";
import { at, sampleCase } from "./sample-cases.test-support.js";
import { ownPostgres, runIn, type TestPostgres } from "./test-databases.test-support.js";

const KILLS = 200;
const KILLS_OF_DATABASE = 12;
/** One in so many takes the whole server, the others the process that is saving: then the server recovers by itself. */
const WHOLE_SERVER_EACH = 4;
const WRITERS = 4;
/** Under a minute on a quiet machine. */
const TIME_LIMIT_MS = 400_000;
const PATIENCE_MS = 30_000;

let server: TestPostgres;
beforeAll(async () => {
  server = await ownPostgres({ durable: true });
}, 60_000);
afterAll(() => server.stop());

let databases = 0;
async function nextDatabase(): Promise<string> {
  const name = `killed_${databases++}`;
  await runIn(server.address, `create database ${name}`);
  return server.address.replace(/\/postgres$/, `/${name}`);
}

test(`PostgreSQL: ${KILLS} kills of the program in the middle of saving lose nothing that was acknowledged`, {
  timeout: TIME_LIMIT_MS,
}, async () => {
  const acknowledged = await killWhileSaving(KILLS, async () => ({ address: await nextDatabase() }));
  expect(acknowledged).toBeGreaterThan(KILLS * 4);
});

/** Saves without pause while the database comes and goes; keeps what was acknowledged. */
async function write(store: CaseStore, writer: number, acknowledged: Map<string, string>, ended: () => boolean): Promise<void> {
  for (let k = 0; !ended(); k++) {
    const id = `writer-${writer}-${k}`;
    const notes = `saved ${k}`;
    const made = await store.create(sampleCase(id, { notes }), at(0)).catch(() => null);
    if (made?.ok) acknowledged.set(id, notes);
    else await new Promise((resolve) => setTimeout(resolve, 5));
  }
}

/** The work's answer once the database gives one. */
async function patiently<Answer>(work: () => Promise<Answer>): Promise<Answer> {
  const started = performance.now();
  for (;;) {
    try {
      return await work();
    } catch (error) {
      if (performance.now() - started > PATIENCE_MS) throw error;
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  }
}

/** A process of the server that works for the store. */
async function oneWorker(address: string): Promise<number | undefined> {
  const client = new pg.Client({ connectionString: address });
  client.on("error", () => undefined);
  await client.connect();
  const { rows } = await client.query<{ readonly pid: number }>("select pid from pg_stat_activity where application_name = 'halfturn'");
  await client.end();
  return rows[0]?.pid;
}

test(`PostgreSQL: ${KILLS_OF_DATABASE} kills of the database lose nothing, and the store goes on by itself`, {
  timeout: TIME_LIMIT_MS,
}, async () => {
  const address = await nextDatabase();
  const store = await openStore({ address });
  const acknowledged = new Map<string, string>();
  let ended = false;
  const writing = Promise.all(Array.from({ length: WRITERS }, (_, writer) => write(store, writer, acknowledged, () => ended)));
  for (let kill = 1; kill <= KILLS_OF_DATABASE; kill++) {
    const before = acknowledged.size;
    await patiently(async () => expect(acknowledged.size).toBeGreaterThan(before));
    if (kill % WHOLE_SERVER_EACH === 0) {
      await server.kill();
      await patiently(() => server.start());
    } else {
      const worker = await patiently(() => oneWorker(address));
      if (worker !== undefined) process.kill(worker, "SIGKILL");
    }
    expect(await patiently(() => store.check())).toEqual([]);
  }
  ended = true;
  await writing;
  for (const [id, notes] of acknowledged) {
    const read = await patiently(() => store.read(id));
    expect(read.is === "held" && read.held.document.notes, id).toBe(notes);
  }
  expect(acknowledged.size).toBeGreaterThan(KILLS_OF_DATABASE);
  await store.close();
});
