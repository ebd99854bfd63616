import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { addressOf, end, serve } from "./server-process.js";
import { WEB } from "./shop.js";

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
  const child = serve(["--lan", "--port", "0", "--data", folder, "--web", WEB, "--no-demo"], ["--import", pathToFileURL(clock).href]);
  const home = await addressOf(child);
  const { addresses } = (await (await fetch(`${home}/api/pairing`)).json()) as { readonly addresses: readonly string[] };
  const [network] = addresses;
  if (network === undefined) throw new Error("this machine has no address in a network, so no device can be let in");
  return {
    home,
    network,
    putForward: (ms) => writeFileSync(offset, String(Number(readFileSync(offset, "utf8")) + ms)),
    remove: async () => {
      await end(child);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
