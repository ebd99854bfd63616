import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { request } from "node:http";
import { request as secureRequest } from "node:https";
import { connect, createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { CaseList } from "@halfturn/exchange";
import { afterAll, describe, expect, test, vi } from "vitest";
import { sampleCase, serverSettings } from "./shop.test-support.js";
import { backUp, putBack } from "./shop-location.js";
import { type RunningServer, type ServerSettings, startServer } from "./start-server.js";

const folder = mkdtempSync(join(tmpdir(), "halfturn-socket-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let count = 0;
const settings = (more: Partial<ServerSettings> = {}): ServerSettings => serverSettings({ folder: join(folder, String(count++)), ...more });

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

test("a folder that one server serves is refused to a second, until the first has stopped", async () => {
  const one = settings();
  const first = await startServer(one);
  await expect(startServer(one)).rejects.toMatchObject({ code: "store-held", place: first.place });
  expect((await post(first, sampleCase("still-served"))).status).toBe(201);
  await first.stop();
  const second = await startServer(one);
  expect((await fetch(`${second.address}/api/cases/still-served`)).status).toBe(200);
  await second.stop();
});

test("a folder that is served can be backed up, and takes no backup in", async () => {
  const one = settings();
  const backup = join(folder, "while-served.backup");
  const server = await startServer(one);
  await expect(backUp(one, backup)).resolves.toBe(true);
  expect(statSync(backup).mode & 0o077).toBe(0);
  await expect(putBack(one, backup)).rejects.toMatchObject({ code: "store-held" });
  await server.stop();
  await expect(putBack(one, backup)).resolves.toMatchObject({ ok: true, cases: 0 });
});

test("an app that is built while the server runs is served from then on", async () => {
  const web = join(folder, "built-later");
  const server = await startServer(settings({ web }));
  expect(await (await fetch(server.address)).json()).toMatchObject({ code: "app-missing", message: expect.stringContaining("npm start") });
  mkdirSync(web);
  writeFileSync(join(web, "index.html"), "<!doctype html><title>Late</title>");
  expect(await (await fetch(server.address)).text()).toContain("Late");
  await server.stop();
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

test("a port that is taken is said, and nothing is left behind", async () => {
  const other = createServer();
  await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", resolve));
  const address = other.address();
  const port = typeof address === "object" && address !== null ? address.port : 0;
  const one = settings({ port, demo: true });
  await expect(startServer(one)).rejects.toMatchObject({ code: "EADDRINUSE", syscall: "listen" });
  await expect(startServer({ ...one, port: 0, lanPort: port })).rejects.toMatchObject({ code: "EADDRINUSE" });
  expect(existsSync(one.folder)).toBe(false);
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

test("a client that breaks off in the middle of a save changes nothing, and is no fault of the server", async () => {
  const lines: string[] = [];
  const server = await startServer(settings({ writeLog: (line) => lines.push(line) }));
  const { port } = new URL(server.address);
  const socket = connect(Number(port), "127.0.0.1");
  socket.write(`POST /api/cases HTTP/1.1\r\nHost: localhost:${port}\r\nContent-Length: 1000\r\n\r\n{"format":`);
  await new Promise((resolve) => setTimeout(resolve, 100));
  socket.destroy();
  await vi.waitFor(() => expect(lines.join("")).toContain('"status":400'));
  expect(lines.join("")).not.toContain("server-fault");
  expect(((await (await fetch(`${server.address}/api/cases`)).json()) as CaseList).cases).toEqual([]);
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

describe("the folder of the data", () => {
  test("is closed to others, with all that is in it, where it holds nothing else", async () => {
    const one = settings();
    const files = ["halfturn.sqlite", "halfturn.sqlite-wal"];
    mkdirSync(one.folder);
    chmodSync(one.folder, 0o777);
    for (const name of files) writeFileSync(join(one.folder, name), "", { mode: 0o666 });
    for (const name of files) chmodSync(join(one.folder, name), 0o666);
    const server = await startServer(one);
    expect(server.folderOpen).toBe(false);
    expect(statSync(one.folder).mode & 0o777).toBe(0o700);
    for (const name of readdirSync(one.folder)) expect([name, statSync(join(one.folder, name)).mode & 0o077]).toEqual([name, 0]);
    await server.stop();
  });

  test("with other things in it stays as it is, and is told of; the database in it is closed", async () => {
    const one = settings();
    mkdirSync(one.folder);
    chmodSync(one.folder, 0o755);
    writeFileSync(join(one.folder, "invoice.txt"), "");
    const server = await startServer(one);
    expect(server.folderOpen).toBe(true);
    expect(statSync(one.folder).mode & 0o777).toBe(0o755);
    expect(statSync(server.place).mode & 0o077).toBe(0);
    await server.stop();
  });

  test("that is a file is said to be one", async () => {
    const one = settings();
    writeFileSync(one.folder, "a letter");
    await expect(startServer(one)).rejects.toMatchObject({ code: "not-a-folder", place: one.folder });
    expect(readFileSync(one.folder, "utf8")).toBe("a letter");
  });

  test.each(["", "-wal", "-shm", "-serving"])(
    "with a link in the place of its file %s is refused, and where it leads nothing changes",
    async (ending) => {
      const one = settings();
      const elsewhere = join(folder, `elsewhere${ending}`);
      mkdirSync(one.folder);
      writeFileSync(elsewhere, "");
      symlinkSync(elsewhere, join(one.folder, `halfturn.sqlite${ending}`));
      await expect(startServer(one)).rejects.toMatchObject({
        code: "not-a-file",
        place: expect.stringContaining(`halfturn.sqlite${ending}`),
      });
      expect(readFileSync(elsewhere, "utf8")).toBe("");
    },
  );
});
