import { execFileSync, spawn } from "node:child_process";
import { chmodSync, mkdirSync, statSync } from "node:fs";
import { request } from "node:http";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildProgram, type Program } from "./program.test-support.js";

let program: Program;
beforeAll(async () => {
  program = await buildProgram();
}, 60_000);
afterAll(() => program.remove());

const CASE_ID = "skerry-rescue-0177";
/** A stop that does not wait for anything is over within so long, on a machine that has other work too. */
const AT_ONCE_MS = 2000;

interface Served {
  readonly port: number;
  readonly pid: number;
  readonly signal: (signal: NodeJS.Signals) => void;
  /** Exit code, or the signal that ended it. */
  readonly ended: Promise<number | NodeJS.Signals | null>;
  readonly running: () => boolean;
  /** What it has printed so far. */
  readonly said: () => string;
}

async function serve(...args: string[]): Promise<Served> {
  const child = program.start(["serve", "--port", "0", ...args]);
  let out = "";
  let err = "";
  child.stderr.on("data", (chunk) => {
    err += chunk;
  });
  const ended = new Promise<number | NodeJS.Signals | null>((resolve) => child.once("close", (code, signal) => resolve(signal ?? code)));
  const port = await new Promise<number>((resolve, reject) => {
    child.stdout.on("data", (chunk) => {
      out += chunk;
      const found = /ready: \S+:(\d+)[\s\S]*Stop it/.exec(out)?.[1];
      if (found) resolve(Number(found));
    });
    void ended.then((how) => reject(new Error(`ended with ${how}: ${err}`)));
  });
  return {
    port,
    pid: child.pid ?? 0,
    ended,
    signal: (signal) => child.kill(signal),
    said: () => out,
    running: () => child.exitCode === null && !child.signalCode,
  };
}

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

interface Answer {
  readonly status: number;
  readonly bytes: number;
}

/** A request whose body is sent in two parts, the second one when it is told to. */
function sendInParts(port: number, path: string, method: string, parts: readonly [string, string]) {
  let finish = (): void => undefined;
  const answer = new Promise<Answer>((resolve, reject) => {
    const headers = { "content-length": Buffer.byteLength(parts.join("")) };
    const sending = request({ host: "127.0.0.1", port, path, method, headers: { ...headers, host: `localhost:${port}` } }, (response) => {
      let bytes = 0;
      response.on("data", (chunk: Buffer) => {
        bytes += chunk.length;
      });
      response.on("end", () => resolve({ status: response.statusCode ?? 0, bytes }));
      response.on("error", reject);
    });
    sending.on("error", reject);
    sending.write(parts[0]);
    finish = () => sending.end(parts[1]);
  });
  return { answer, finish: () => finish() };
}

/** A case to save, cut in the middle. */
async function caseInParts(port: number, id: string): Promise<readonly [string, string]> {
  const document = (await (await fetch(`http://localhost:${port}/api/cases/${CASE_ID}`)).json()) as object;
  const text = JSON.stringify({ ...document, id });
  return [text.slice(0, 500), text.slice(500)];
}

describe("told to stop", () => {
  test("in the middle of a save it takes the rest, answers, and ends; the case is there at the next start", async () => {
    const shop = ["--data", program.path("saving")];
    const served = await serve(...shop);
    const save = sendInParts(served.port, "/api/cases", "POST", await caseInParts(served.port, "in-the-middle"));
    await pause(200);
    served.signal("SIGTERM");
    await pause(300);
    await expect(fetch(`http://localhost:${served.port}/api/health`)).rejects.toThrow();
    save.finish();
    expect((await save.answer).status).toBe(201);
    expect(await served.ended).toBe(0);
    const again = await serve(...shop);
    expect((await fetch(`http://localhost:${again.port}/api/cases/in-the-middle`)).status).toBe(200);
    again.signal("SIGTERM");
    expect(await again.ended).toBe(0);
  });

  test("while it makes a report it finishes the report, answers, and ends", async () => {
    const served = await serve("--data", program.path("reporting"));
    const report = sendInParts(served.port, `/api/cases/${CASE_ID}/report.pdf`, "GET", ["", ""]);
    report.finish();
    await pause(150);
    served.signal("SIGTERM");
    const { status, bytes } = await report.answer;
    expect(status).toBe(200);
    expect(bytes).toBeGreaterThan(50_000);
    expect(await served.ended).toBe(0);
  });

  test.each(["SIGTERM", "SIGINT"] as const)("a second time, by %s, it ends at once, whatever it waits for", async (signal) => {
    const served = await serve("--data", program.path(`twice-${signal}`));
    const save = sendInParts(served.port, "/api/cases", "POST", await caseInParts(served.port, "half"));
    const refused = expect(save.answer).rejects.toThrow();
    await pause(200);
    served.signal(signal);
    await pause(500);
    expect(served.running()).toBe(true);
    expect(served.said()).toContain("Finishing requests that were begun (1), 10 s at the most. Ctrl-C again stops at once.");
    const told = performance.now();
    served.signal(signal);
    expect(await served.ended).toBe(signal);
    expect(performance.now() - told).toBeLessThan(AT_ONCE_MS);
    await refused;
  });
});

test("bodies of 60 MB are refused one after another, on one connection, and leave nothing in memory", async () => {
  const served = await serve("--data", program.path("large"));
  // Kilobytes; ps is on every system that has SIGTERM.
  const memory = (): number => Number(execFileSync("ps", ["-o", "rss=", "-p", String(served.pid)], { encoding: "utf8" }));
  const body = new Uint8Array(60_000_000).fill(0x20);
  const send = async (): Promise<number> => (await fetch(`http://localhost:${served.port}/api/cases`, { method: "POST", body })).status;
  expect(await send()).toBe(413);
  const before = memory();
  for (let k = 0; k < 5; k++) expect(await send()).toBe(413);
  // Kept whole, five of them would be 300 MB.
  expect(memory() - before).toBeLessThan(60_000);
  expect((await fetch(`http://localhost:${served.port}/api/health`)).status).toBe(200);
  served.signal("SIGTERM");
  expect(await served.ended).toBe(0);
});

describe("a folder that may only be read", () => {
  /** The superuser may write everywhere; as that the program is run as somebody else. */
  const nobody = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};

  /** Runs the program in another's place; its whole output once it has ended. */
  async function tryToServe(folder: string): Promise<{ readonly code: number | null; readonly err: string }> {
    chmodSync(dirname(dirname(program.file)), 0o755);
    const child = spawn(process.execPath, [program.file, "serve", "--port", "0", "--data", folder], {
      ...nobody,
      env: { ...process.env, LC_ALL: "C" },
    });
    let err = "";
    child.stderr.on("data", (chunk) => {
      err += chunk;
    });
    const late = setTimeout(() => child.kill("SIGKILL"), 10_000);
    const code = await new Promise<number | null>((resolve) => child.once("close", resolve));
    clearTimeout(late);
    return { code, err };
  }

  test("with or without a shop in it is said in one line, and stays as it is", async () => {
    chmodSync(program.folder, 0o755);
    const empty = program.path("read-only");
    mkdirSync(empty);
    const filled = program.path("filled-read-only");
    const served = await serve("--data", filled);
    served.signal("SIGTERM");
    await served.ended;
    const file = join(filled, "halfturn.sqlite");
    chmodSync(file, 0o444);
    for (const folder of [empty, filled]) {
      chmodSync(folder, 0o555);
      const { code, err } = await tryToServe(folder);
      expect([code, err]).toEqual([
        2,
        expect.stringMatching(/^\S*(read-only)\S* (cannot be written|may not be opened by this user)\..*\n$/),
      ]);
    }
    expect(statSync(file).mode & 0o777).toBe(0o444);
    for (const folder of [empty, filled]) chmodSync(folder, 0o755);
  });
});
