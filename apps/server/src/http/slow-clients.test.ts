import { connect, type Socket } from "node:net";
import { OpenAPIHono } from "@hono/zod-openapi";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type ClaimedPort, claimPort } from "./claim-port.js";

const PATIENCE = { headersMs: 400, requestMs: 1000 };
/** A limit is looked at five times in its own length; the rest is for machines that have other work too. */
const ENDED_WITHIN_MS = 6000;
const MANY = 100;

let plain: ClaimedPort;
let secure: ClaimedPort;
beforeAll(async () => {
  [plain, secure] = await Promise.all([
    claimPort({ host: "127.0.0.1", port: 0, secure: false, patience: PATIENCE }),
    claimPort({ host: "127.0.0.1", port: 0, secure: true, patience: PATIENCE }),
  ]);
  const app = new OpenAPIHono();
  app.get("/", (c) => c.text("here"));
  app.post("/", async (c) => c.text(String((await c.req.arrayBuffer()).byteLength)));
  app.onError((_, c) => c.text("gone", 400));
  for (const claimed of [plain, secure]) claimed.answerBy(app);
});
afterAll(() => Promise.all([plain.stop(), secure.stop()]));

/** A connection, what came through it until it ended, and after how long that was. */
function open(
  port: number,
  says: string,
): { readonly socket: Socket; readonly ended: Promise<{ readonly text: string; readonly afterMs: number }> } {
  const begun = performance.now();
  const socket = connect(port, "127.0.0.1");
  socket.write(says);
  let text = "";
  socket.on("data", (chunk) => {
    text += chunk;
  });
  socket.on("error", () => undefined);
  return { socket, ended: new Promise((resolve) => socket.once("close", () => resolve({ text, afterMs: performance.now() - begun }))) };
}

const BEGUN = "POST / HTTP/1.1\r\nHost: localhost\r\n";

describe("a client that keeps the server waiting", () => {
  test.each([
    ["and says nothing", ""],
    ["in the middle of its headers", `${BEGUN}X-Slow: `],
  ])("%s is sent away, however many do, and others are answered meanwhile", async (_, says) => {
    const all = Array.from({ length: MANY }, () => open(plain.port, says));
    expect(await (await fetch(`http://127.0.0.1:${plain.port}/`)).text()).toBe("here");
    for (const { afterMs } of await Promise.all(all.map(({ ended }) => ended))) {
      expect(afterMs).toBeGreaterThan(PATIENCE.headersMs / 2);
      expect(afterMs).toBeLessThan(ENDED_WITHIN_MS);
    }
  });

  test("byte after byte of its body is sent away too", async () => {
    const { socket, ended } = open(plain.port, `${BEGUN}Content-Length: 1000000\r\n\r\n`);
    const drops = setInterval(() => socket.write("x"), 50);
    const { text, afterMs } = await ended;
    clearInterval(drops);
    expect(text).toMatch(/^HTTP\/1.1 408 /);
    expect(afterMs).toBeGreaterThan(PATIENCE.requestMs / 2);
    expect(afterMs).toBeLessThan(ENDED_WITHIN_MS);
  });

  test("with its part of the key is sent away as well", async () => {
    const { afterMs } = await open(secure.port, "").ended;
    expect(afterMs).toBeLessThan(ENDED_WITHIN_MS);
  });
});

test("a request that comes before the app is there waits for it", async () => {
  const claimed = await claimPort({ host: "127.0.0.1", port: 0, secure: false });
  const asked = fetch(`http://127.0.0.1:${claimed.port}/`);
  await new Promise((resolve) => setTimeout(resolve, 100));
  const app = new OpenAPIHono();
  app.get("/", (c) => c.text("now"));
  claimed.answerBy(app);
  expect(await (await asked).text()).toBe("now");
  await claimed.stop();
});

test("and is refused when the app never comes", async () => {
  const claimed = await claimPort({ host: "127.0.0.1", port: 0, secure: false });
  const asked = fetch(`http://127.0.0.1:${claimed.port}/`);
  await new Promise((resolve) => setTimeout(resolve, 100));
  await claimed.stop();
  expect((await asked).status).toBe(503);
});
