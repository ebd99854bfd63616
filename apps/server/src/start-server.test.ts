import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { request } from "node:http";
import { request as secureRequest } from "node:https";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { CaseList } from "@halfturn/exchange";
import { afterAll, expect, test } from "vitest";
import { sampleCase } from "./shop.test-support.js";
import { type RunningServer, type ServerSettings, startServer } from "./start-server.js";

const folder = mkdtempSync(join(tmpdir(), "halfturn-socket-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let count = 0;
const settings = (more: Partial<ServerSettings> = {}): ServerSettings => ({
  port: 0,
  folder: join(folder, String(count++)),
  database: null,
  web: null,
  lanPort: null,
  demo: false,
  version: "0.0.0",
  now: () => new Date().toISOString(),
  newId: () => "copy",
  writeLog: () => undefined,
  ...more,
});

const post = (server: RunningServer, document: unknown): Promise<Response> =>
  fetch(`${server.address}/api/cases`, { method: "POST", body: JSON.stringify(document) });

test("what was saved is there after a restart", async () => {
  const one = settings();
  const first = await startServer(one);
  expect((await post(first, sampleCase("kept"))).status).toBe(201);
  await first.stop();
  const second = await startServer(one);
  expect((await fetch(`${second.address}/api/cases/kept`)).status).toBe(200);
  await second.stop();
});

test("an empty shop gets the demonstration, once", async () => {
  const one = settings({ demo: true });
  const first = await startServer(one);
  expect(first.demoCases).toBeGreaterThanOrEqual(12);
  const { cases } = (await (await fetch(`${first.address}/api/cases?limit=200`)).json()) as CaseList;
  expect(cases).toHaveLength(first.demoCases);
  await first.stop();
  const second = await startServer(one);
  expect(second.demoCases).toBe(0);
  await second.stop();
});

test("listens on this machine only", async () => {
  const server = await startServer(settings());
  expect(server.address).toMatch(/^http:\/\/localhost:\d+$/);
  await expect(fetch(server.address.replace("localhost", "127.0.0.2"))).rejects.toThrow();
  await server.stop();
});

test("in the local network it listens too, over HTTPS, and lets nobody in without a key", async () => {
  const one = settings({ lanPort: 0 });
  const server = await startServer(one);
  const ca = readFileSync(join(one.folder, "lan", "authority.crt"), "utf8");
  const told = (await (await fetch(`${server.address}/api/pairing`)).json()) as { readonly addresses: readonly string[] };
  expect(told.addresses).toEqual(server.lanAddresses);
  for (const address of server.lanAddresses) {
    const status = await new Promise((resolve, reject) => {
      const asking = secureRequest(`${address}/api/cases`, { ca }, (answer) => resolve(answer.resume().statusCode));
      asking.on("error", reject);
      asking.end();
    });
    expect([address, status]).toEqual([expect.stringMatching(/^https:\/\/[\d.]+:[1-9]\d*$/), 401]);
  }
  await server.stop();
});

test("a port that is taken is said, and the database let go", async () => {
  const other = createServer();
  await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", resolve));
  const address = other.address();
  const port = typeof address === "object" && address !== null ? address.port : 0;
  await expect(startServer(settings({ port }))).rejects.toMatchObject({ code: "EADDRINUSE", syscall: "listen" });
  other.close();
});

test("a client that goes on sending too much gets its answer, and the next one is served", async () => {
  const server = await startServer(settings());
  const { port } = new URL(server.address);
  const answer = await new Promise<{ readonly status: number | undefined; readonly text: string }>((resolve, reject) => {
    const sending = request(
      { host: "127.0.0.1", port, method: "POST", path: "/api/cases", headers: { host: `localhost:${port}` } },
      (response) => {
        let text = "";
        response.on("data", (chunk) => {
          text += chunk;
        });
        response.on("end", () => resolve({ status: response.statusCode, text }));
      },
    );
    sending.on("error", reject);
    const chunk = Buffer.alloc(1_000_000, 0x20);
    for (let k = 0; k < 25; k++) sending.write(chunk);
    sending.end();
  });
  expect(answer.status).toBe(413);
  expect(JSON.parse(answer.text)).toMatchObject({ code: "body-too-large" });
  expect((await fetch(`${server.address}/api/health`)).status).toBe(200);
  await server.stop();
});

test("stopping ends the streams and waits for what is being saved", async () => {
  const one = settings();
  const server = await startServer(one);
  const stream = await fetch(`${server.address}/api/events`);
  const told = stream.text();
  const saving = Promise.all(
    Array.from({ length: 20 }, (_, k) =>
      post(server, sampleCase(`late-${k}`)).then(
        ({ status }) => status,
        () => 0,
      ),
    ),
  );
  await new Promise((resolve) => setTimeout(resolve, 30));
  await server.stop();
  expect(await told).toContain("event: fresh");
  const statuses = await saving;
  const again = await startServer(one);
  for (const [k, status] of statuses.entries()) {
    if (status === 201) expect((await fetch(`${again.address}/api/cases/late-${k}`)).status).toBe(200);
  }
  await again.stop();
});
