import { spawn } from "node:child_process";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect } from "vitest";
import type { StoreLocation } from "./open-database.js";
import { openStore } from "./open-store.js";
import { temporaryFolder } from "./test-databases.test-support.js";

/** Two programs at a time, each in a database of its own that is begun anew after so many kills. */
const LANES = 2;
const KILLS_EACH = 20;

type Bundle = (entry: string, outfile: string) => Promise<readonly string[]>;

/** Kills the program once it has said so much, and gives the acknowledgements that reached us. */
function killAfter(writer: string, location: StoreLocation, round: number, saves: number): Promise<readonly string[]> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [writer, JSON.stringify(location), String(round)], { stdio: ["ignore", "pipe", "pipe"] });
    let said = "";
    let complained = "";
    child.stdout.on("data", (chunk) => {
      said += chunk;
      if (said.split("\n").length > saves) child.kill("SIGKILL");
    });
    child.stderr.on("data", (chunk) => {
      complained += chunk;
    });
    child.on("close", (_, signal) => {
      if (signal === "SIGKILL") resolve(said.split("\n").slice(0, -1));
      else reject(new Error(`the program ended by itself: ${complained}`));
    });
  });
}

/** Opens the store as after a crash: everything acknowledged must be there, and everything that is there must be sound. */
async function expectAllKept(location: StoreLocation, acknowledged: readonly string[]): Promise<void> {
  const store = await openStore(location);
  expect(await store.check()).toEqual([]);
  for (const line of acknowledged) {
    const [id = "", revision = ""] = line.split(" ");
    const kept = await store.revision(id, Number(revision));
    expect(kept?.document.notes, line).toMatch(revision === "1" ? /^first/ : /^second/);
  }
  await store.close();
}

/** Kills the saving program so many times; gives how many saves it had acknowledged in all. */
export async function killWhileSaving(kills: number, next: (folder: string) => Promise<StoreLocation>): Promise<number> {
  // Below the package, where the driver that stays outside the bundle is found.
  const folder = temporaryFolder(fileURLToPath(new URL("../dist", import.meta.url)));
  const { bundle } = (await import(new URL("../../../scripts/bundle.mjs", import.meta.url).href)) as { readonly bundle: Bundle };
  const writer = join(folder.path, "writer.js");
  await bundle(fileURLToPath(new URL("./kill-writer.test-support.ts", import.meta.url)), writer);
  let acknowledged = 0;
  const lane = async (): Promise<void> => {
    for (let base = 0; base < kills / LANES / KILLS_EACH; base++) {
      const location = await next(folder.path);
      for (let round = 0; round < KILLS_EACH; round++) {
        const lines = await killAfter(writer, location, round, 1 + ((round * 7 + base) % 13));
        await expectAllKept(location, lines);
        acknowledged += lines.length;
      }
    }
  };
  await Promise.all(Array.from({ length: LANES }, lane));
  folder.remove();
  return acknowledged;
}
