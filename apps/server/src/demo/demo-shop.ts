import { readFile } from "node:fs/promises";
import { type Case, examples, restore } from "@halfturn/casefile";
import type { CaseStore } from "@halfturn/store";
import { demoCases } from "./demo-cases.js";

const DEVICE = "Demo";

/** The correction of the example that was made and gauged again, at the moment when it was chosen and not made yet. */
const ID_OF_CORRECTED = "skerry-water-0031";

/** Every case of the demonstration, oldest first. */
export async function demoShop(): Promise<readonly Case[]> {
  const kept = await Promise.all(examples.map(async ({ url }) => restored(await readFile(new URL(url), "utf8"))));
  const corrected = kept.find(({ id }) => id === ID_OF_CORRECTED);
  const all = [...kept, ...(corrected === undefined ? [] : [waitingForParts(corrected)]), ...demoCases];
  return [...all].sort((a, b) => (a.createdAt < b.createdAt ? -1 : 1));
}

/** Puts the demonstration into a store in which nothing was ever saved; how many cases that were. */
export async function fillWithDemo(store: CaseStore, now: () => string): Promise<number> {
  if ((await store.latest()) > 0) return 0;
  const shop = await demoShop();
  await store.createAll(shop, { savedBy: DEVICE, savedAt: now() });
  return shop.length;
}

/** The examples come with the program; that one of them is no case would be a programmer error. */
function restored(text: string): Case {
  const result = restore(text);
  if (!result.ok) throw new Error(`an example is no case: ${JSON.stringify(result.problems)}`);
  return result.case;
}

function waitingForParts(corrected: Case): Case {
  return {
    ...corrected,
    id: "skerry-water-0033",
    vehicle: { ...corrected.vehicle, label: "Skerry Water Works, crane truck 4 (light truck, rear drive)" },
    title: "Crane truck 4: wedges ordered, to be fitted",
    gauging: (corrected.gauging ?? []).filter(({ stage }) => stage === "as-found"),
    corrections: (corrected.corrections ?? []).map(({ madeAt: _, ...correction }) => ({ ...correction, state: "chosen" })),
  };
}
