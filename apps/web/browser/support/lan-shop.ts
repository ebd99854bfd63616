import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { WEB } from "./shop.js";

const PROGRAM = process.env.HALFTURN_PROGRAM ?? fileURLToPath(new URL("../../../cli/dist/halfturn.js", import.meta.url));
const START_MS = 20_000;

/** A shop that lets devices of the network in, and whose clock can be put forward. */
export interface LanShop {
  /** On the shop's own screen: `http://localhost:PORT`. */
  readonly home: string;
  /** From the network: `https://ADDRESS:PORT`, by a certificate that no browser knows. */
  readonly network: string;
  readonly putForward: (ms: number) => void;
  readonly remove: () => Promise<void>;
}

export async function openLanShop(): Promise<LanShop> {
  const folder = mkdtempSync(join(tmpdir(), "halfturn-lan-"));
  const [offset, clock] = [join(folder, "offset"), join(folder, "clock.mjs")];
  writeFileSync(offset, "0");
  writeFileSync(
    clock,
    `import { readFileSync } from "node:fs";
     const Clock = Date;
     const now = () => Clock.now() + Number(readFileSync(${JSON.stringify(offset)}, "utf8"));
     globalThis.Date = class extends Clock {
       constructor(...at) {
         super(...(at.length === 0 ? [now()] : at));
       }
       static now = now;
     };`,
  );
  const args = [
    "--import",
    pathToFileURL(clock).href,
    PROGRAM,
    "serve",
    "--lan",
    "--port",
    "0",
    "--data",
    folder,
    "--web",
    WEB,
    "--no-demo",
  ];
  const child = spawn(process.execPath, args, { stdio: ["ignore", "pipe", "ignore"] });
  const home = await printed(child);
  const { addresses } = (await (await fetch(`${home}/api/pairing`)).json()) as { readonly addresses: readonly string[] };
  const [network] = addresses;
  if (network === undefined) throw new Error("this machine has no address in a network, so no device can be let in");
  return {
    home,
    network,
    putForward: (ms) => writeFileSync(offset, String(Number(readFileSync(offset, "utf8")) + ms)),
    remove: async () => {
      const ended = once(child, "exit");
      child.kill("SIGTERM");
      await ended;
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** The address that the server prints once it listens. */
async function printed(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let text = "";
    child.stdout?.on("data", (part: Buffer) => {
      text += part.toString();
      const [found] = /http:\/\/localhost:\d+/.exec(text) ?? [];
      if (found !== undefined) resolve(found);
    });
    child.once("exit", (code) => reject(new Error(`the server ended with ${code} before it listened`)));
    setTimeout(() => reject(new Error("the server did not listen in time")), START_MS).unref();
  });
}
