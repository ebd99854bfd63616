import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import pg from "pg";

export interface TestPostgres {
  readonly address: string;
  readonly kill: () => Promise<void>;
  readonly start: () => Promise<void>;
  readonly stop: () => Promise<void>;
}

type StartTestPostgres = (options?: { readonly durable?: boolean }) => Promise<TestPostgres>;

/** A server of this test's own, which it may kill. */
export async function ownPostgres(options?: { readonly durable?: boolean }): Promise<TestPostgres> {
  const script = new URL("../../../scripts/test-postgres.mjs", import.meta.url).href;
  const { startTestPostgres } = (await import(script)) as { readonly startTestPostgres: StartTestPostgres };
  return startTestPostgres(options);
}

/** Runs a statement in a database. */
export async function runIn(address: string, statement: string): Promise<void> {
  const client = new pg.Client({ connectionString: address });
  await client.connect();
  try {
    await client.query(statement);
  } finally {
    await client.end();
  }
}

/** Empty databases on a server that all tests share where there is one, else on one of this file's own. */
export interface EmptyDatabases {
  /** The address of a new, empty database. */
  readonly next: () => Promise<string>;
  readonly stop: () => Promise<void>;
}

export async function emptyDatabases(): Promise<EmptyDatabases> {
  const shared = process.env.HALFTURN_TEST_POSTGRES;
  const own = shared === undefined || shared === "" ? await ownPostgres() : null;
  const server = own?.address ?? (shared as string);
  const made: string[] = [];
  return {
    next: async () => {
      const name = `halfturn_test_${process.pid}_${performance.now().toString(36).replace(".", "_")}`;
      await runIn(server, `create database ${name}`);
      made.push(name);
      const address = new URL(server);
      address.pathname = `/${name}`;
      return address.href;
    },
    stop: async () => {
      if (own === null) for (const name of made) await runIn(server, `drop database if exists ${name} with (force)`);
      else await own.stop();
    },
  };
}

/** A folder that is gone after the test; below the system's own for such things unless said otherwise. */
export function temporaryFolder(below: string = tmpdir()): { readonly path: string; readonly remove: () => void } {
  mkdirSync(below, { recursive: true });
  const path = mkdtempSync(join(below, "halfturn-store-"));
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) };
}
