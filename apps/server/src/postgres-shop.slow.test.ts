import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { sampleCase, serverSettings } from "./shop.test-support.js";
import { type RunningServer, startServer } from "./start-server.js";

interface TestPostgres {
  readonly address: string;
  readonly kill: () => Promise<void>;
  readonly start: () => Promise<void>;
  readonly stop: () => Promise<void>;
}

/** A change on one device is to be seen on another within so long. */
const SEEN_WITHIN_MS = 2000;
const PATIENCE = { timeout: 30_000, interval: 200 };

let postgres: TestPostgres;
let servers: readonly RunningServer[];
beforeAll(async () => {
  const script = new URL("../../../scripts/test-postgres.mjs", import.meta.url).href;
  const { startTestPostgres } = (await import(script)) as { readonly startTestPostgres: () => Promise<TestPostgres> };
  postgres = await startTestPostgres();
  const settings = serverSettings({ folder: "", database: postgres.address });
  servers = [await startServer(settings), await startServer(settings)];
}, 60_000);
afterAll(async () => {
  await Promise.all(servers.map(({ stop }) => stop()));
  await postgres.stop();
});

const post = async (server: RunningServer | undefined, id: string): Promise<number> =>
  (await fetch(`${server?.address}/api/cases`, { method: "POST", body: JSON.stringify(sampleCase(id)) })).status;

/** A device that listens at a server. */
async function device(server: RunningServer | undefined) {
  const gone = new AbortController();
  const answer = await fetch(`${server?.address}/api/events`, { signal: gone.signal });
  let text = "";
  const reading = (async () => {
    for await (const chunk of answer.body as unknown as AsyncIterable<Uint8Array>) text += new TextDecoder().decode(chunk);
  })().catch(() => undefined);
  await vi.waitFor(() => expect(text).toContain("event: fresh"), PATIENCE);
  return {
    told: () => text,
    leave: async () => {
      gone.abort();
      await reading;
    },
  };
}

test("devices of two servers on one database see within two seconds what the other saves", async () => {
  const [first, second] = servers;
  const devices = [await device(first), await device(second)] as const;
  for (const [k, at] of [second, first, second].entries()) {
    // Not always at the same moment of the second in which the database is asked.
    await new Promise((resolve) => setTimeout(resolve, 370 * k));
    expect(await post(at, `seen-${k}`)).toBe(201);
    await vi.waitFor(
      () => {
        for (const { told } of devices) expect(told()).toContain(`"id":"seen-${k}"`);
      },
      { timeout: SEEN_WITHIN_MS, interval: 20 },
    );
  }
  for (const { leave } of devices) await leave();
});

test("while the database is gone each request says so, and once it is back all goes on without a restart", async () => {
  const [first, second] = servers;
  const listening = await device(second);
  await postgres.kill();
  await vi.waitFor(async () => expect(await post(first, "meanwhile")).toBe(503), PATIENCE);
  const refused = await fetch(`${first?.address}/api/cases`);
  expect([refused.status, refused.headers.get("retry-after"), await refused.json()]).toEqual([
    503,
    "2",
    expect.objectContaining({ code: "database-unreachable" }),
  ]);
  await vi.waitFor(() => postgres.start(), PATIENCE);
  await vi.waitFor(async () => expect(await post(first, "back")).toBe(201), PATIENCE);
  await vi.waitFor(() => expect(listening.told()).toContain('"id":"back"'), { timeout: SEEN_WITHIN_MS, interval: 20 });
  await listening.leave();
}, 120_000);
