import { caseServer } from "../sync/case-server.js";
import { listenToEvents } from "../sync/event-feed.js";
import { newSync } from "../sync/sync.js";
import { deviceStore } from "./database.js";
import { deviceName } from "./device-name.js";
import type { OpenCase } from "./open-case.js";
import { newShelf } from "./shelf.js";

/** The cases of this device. */
export const shelf = newShelf({ store: deviceStore, now: Date.now, onWaiting: (id) => sync.waiting(id) });

export const server = caseServer({
  fetch: (input, init) => fetch(input, init),
  device: deviceName,
  language: () => document.documentElement.lang || "en",
  onNotPaired: () => sync.notPaired(),
});

/** Keeps them in step with the shop's server. */
export const sync = newSync({
  shelf,
  server,
  timers: { set: (run, ms) => setTimeout(run, ms), clear: (timer) => clearTimeout(timer as number) },
});

/** A case of this device, or of the server: from then on it is here as well. Null where neither has it. */
export async function openAnywhere(id: string): Promise<OpenCase | null> {
  const here = await shelf.open(id);
  if (here) return here;
  const answer = await server.read(id);
  return answer.is === "held" ? shelf.add(answer.held.document, answer.held) : null;
}

/** From now on: what waits is sent, and what other devices save comes in. */
export function startSync(): void {
  void sync.catchUp();
  window.addEventListener("online", () => void sync.catchUp());
  window.addEventListener("offline", () => sync.reached(false));
  listenToEvents({
    changed: (event) => void sync.told(event),
    fresh: () => void sync.catchUp(),
    lost: () => sync.reached(false),
  });
}
