import type { ChildProcess } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Case } from "@halfturn/casefile";
import { addressOf, end, serve } from "./server-process.js";

/** The app that is tested: the one that was built here, or another. */
export const WEB = process.env.HALFTURN_WEB ?? fileURLToPath(new URL("../../dist", import.meta.url));
const EXAMPLES = new URL("../../../../packages/casefile/examples/", import.meta.url);

/** A shop's server of one's own, with an empty store. */
export interface Shop {
  /** `http://localhost:PORT`. */
  readonly address: string;
  /** Ends the server; what it holds stays. */
  readonly stop: () => Promise<void>;
  /** Starts it again on the same port with what it held. */
  readonly start: () => Promise<void>;
  /** Puts a copy of an example case in, under an id that no other call gives, and says which: what a test does to its case is nothing to the next. */
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
  let added = 0;
  const start = async (): Promise<void> => {
    const port = address === "" ? "0" : new URL(address).port;
    child = serve(["--port", port, "--data", folder, "--web", web, ...(demo ? [] : ["--no-demo"])]);
    address = await addressOf(child);
  };
  const stop = async (): Promise<void> => {
    if (child && child.exitCode === null) await end(child);
  };
  await start();
  return {
    get address() {
      return address;
    },
    start,
    stop,
    add: async (example) => {
      const original = JSON.parse(readFileSync(new URL(`${example}.halfturn.json`, EXAMPLES), "utf8")) as Case;
      added += 1;
      const document: Case = { ...original, id: `${original.id}-${added}` };
      const body = JSON.stringify(document);
      const answer = await fetch(`${address}/api/cases`, { method: "POST", body, headers: { "content-type": "application/json" } });
      if (!answer.ok) throw new Error(`the example was refused: ${answer.status} ${await answer.text()}`);
      return document;
    },
    read: async (id) => (await (await fetch(`${address}/api/cases/${encodeURIComponent(id)}`)).json()) as Case,
    remove: async () => {
      await stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
