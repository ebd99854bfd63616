import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Case } from "@halfturn/casefile";

/** What is tested: the program and the app that were built here, or others (an installed one). */
const PROGRAM = process.env.HALFTURN_PROGRAM ?? fileURLToPath(new URL("../../../cli/dist/halfturn.js", import.meta.url));
export const WEB = process.env.HALFTURN_WEB ?? fileURLToPath(new URL("../../dist", import.meta.url));
const EXAMPLES = new URL("../../../../packages/casefile/examples/", import.meta.url);
const START_MS = 20_000;

/** A shop's server of one's own, with an empty store. */
export interface Shop {
  /** `http://localhost:PORT`. */
  readonly address: string;
  /** Ends the server; what it holds stays. */
  readonly stop: () => Promise<void>;
  /** Starts it again on the same port with what it held. */
  readonly start: () => Promise<void>;
  /** Puts an example case in, under its own id, and says which. */
  readonly add: (example: string) => Promise<Case>;
  /** The document of a case as the server holds it. */
  readonly read: (id: string) => Promise<Case>;
  /** Ends the server and takes away what it held. */
  readonly remove: () => Promise<void>;
}

export interface ShopSettings {
  /** A build of the app other than the one that is tested. */
  readonly web?: string;
  /** Whether it starts with the invented cases of an empty shop; it starts with none unless this is said. */
  readonly demo?: boolean;
}

export async function openShop({ web = WEB, demo = false }: ShopSettings = {}): Promise<Shop> {
  const folder = mkdtempSync(join(tmpdir(), "halfturn-browser-"));
  let child: ChildProcess | null = null;
  let address = "";
  const start = async (): Promise<void> => {
    const port = address === "" ? "0" : new URL(address).port;
    const args = [PROGRAM, "serve", "--port", port, "--data", folder, "--web", web, ...(demo ? [] : ["--no-demo"])];
    child = spawn(process.execPath, args, { stdio: ["ignore", "pipe", "ignore"] });
    address = await addressOf(child);
  };
  const stop = async (): Promise<void> => {
    if (!child || child.exitCode !== null) return;
    const ended = once(child, "exit");
    child.kill("SIGTERM");
    await ended;
  };
  await start();
  return {
    get address() {
      return address;
    },
    start,
    stop,
    add: async (example) => {
      const text = readFileSync(new URL(`${example}.halfturn.json`, EXAMPLES), "utf8");
      const answer = await fetch(`${address}/api/cases`, { method: "POST", body: text, headers: { "content-type": "application/json" } });
      if (!answer.ok) throw new Error(`the example was refused: ${answer.status} ${await answer.text()}`);
      return JSON.parse(text) as Case;
    },
    read: async (id) => (await (await fetch(`${address}/api/cases/${encodeURIComponent(id)}`)).json()) as Case,
    remove: async () => {
      await stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** What the server prints when it listens. */
async function addressOf(child: ChildProcess): Promise<string> {
  const printed = new Promise<string>((resolve, reject) => {
    let text = "";
    child.stdout?.on("data", (part: Buffer) => {
      text += part.toString();
      const [found] = /http:\/\/localhost:\d+/.exec(text) ?? [];
      if (found !== undefined) resolve(found);
    });
    child.once("exit", (code) => reject(new Error(`the server ended with ${code} before it listened`)));
    setTimeout(() => reject(new Error("the server did not listen in time")), START_MS).unref();
  });
  return printed;
}
