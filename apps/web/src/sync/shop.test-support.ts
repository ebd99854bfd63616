import { type Case, newCase } from "@halfturn/casefile";
import { same } from "@halfturn/exchange";
import type { DeviceCase, DeviceStore, EditStep } from "../device/device-case.js";
import { newShelf, type Shelf } from "../device/shelf.js";
import { type CaseServer, caseServer } from "./case-server.js";
import { newSync, type Sync } from "./sync.js";

export const sample = (title = "Rumble"): Case => newCase({ id: "case-1", title, layout: "two-piece", createdAt: "2026-02-03T08:00:00Z" });

/** A device's store that forgets everything at the end of the test, as one window of the device sees it. */
export const memoryStore = (): DeviceStore => memoryWindows()();

/** Windows of one device, each with its view of one store. */
export function memoryWindows(): () => DeviceStore {
  const watchers = new Map<DeviceStore, (id: string) => void>();
  const cases = new Map<string, DeviceCase>();
  const steps = new Map<string, readonly EditStep[]>();
  return () => {
    const store: DeviceStore = {
      all: async () => [...cases.values()],
      waiting: async () => [...cases.values()].filter(({ waiting }) => waiting === 1).length,
      read: async (id) => cases.get(id) ?? null,
      write: async (record, tail) => {
        // A store keeps a copy: what is in it shares nothing with what was handed over.
        cases.set(record.id, structuredClone(record));
        if (tail) steps.set(record.id, structuredClone([...(steps.get(record.id) ?? []).slice(0, tail.from), ...tail.steps]));
        for (const [other, written] of watchers) if (other !== store) written(record.id);
      },
      steps: async (id) => steps.get(id) ?? [],
      watch: (written) => watchers.set(store, written),
    };
    return store;
  };
}

interface Kept {
  document: Case;
  revision: number;
  putAway: boolean;
}

/** The shop's server in so far as a device can tell, behind `fetch`. */
export interface FakeShop {
  readonly fetch: typeof fetch;
  readonly kept: Map<string, Kept>;
  /** Requests so far, as `PUT /api/cases/case-1`. */
  readonly asked: string[];
  cut: boolean;
  /** Whether devices of the network are let in. */
  paired: boolean;
}

const json = (body: unknown, status = 200, revision?: number): Response =>
  new Response(JSON.stringify(body), {
    status,
    headers: { "content-type": "application/json", ...(revision === undefined ? {} : { etag: `"${revision}"` }) },
  });
const refused = (code: string, status: number): Response => json({ code, path: "", params: {}, message: code }, status);
const saved = (revision: number, status = 200): Response => json({ revision, savedAt: "", savedBy: "", kind: "saved" }, status, revision);

interface Asked {
  readonly method: string;
  readonly path: string;
  readonly body: string | undefined;
  readonly tag: string | undefined;
}

function list(kept: FakeShop["kept"]): Response {
  const cases = [...kept].filter(([, { putAway }]) => !putAway).map(([id, { revision }]) => ({ id, revision }));
  return json({ cases, next: null });
}

function create(kept: FakeShop["kept"], document: Case): Response {
  const held = kept.get(document.id);
  if (held) return same(held.document, document) ? saved(held.revision, 201) : refused("case-exists", 409);
  kept.set(document.id, { document, revision: 1, putAway: false });
  return saved(1, 201);
}

function change(held: Kept, { method, body, tag }: Asked): Response {
  const document = method === "PUT" ? (JSON.parse(body ?? "") as Case) : held.document;
  if (document.title === "not a title") return refused("case-refused", 422);
  if (method === "PUT" && same(document, held.document)) return saved(held.revision);
  if (tag !== `"${held.revision}"`) return json({ current: { document: held.document, revision: held.revision } }, 412, held.revision);
  held.revision += 1;
  held.document = document;
  held.putAway = method === "DELETE";
  return saved(held.revision);
}

export function fakeShop(): FakeShop {
  const kept = new Map<string, Kept>();
  const answer = ({ method, path, body, tag }: Asked): Response => {
    const [, , , id = "", action] = path.split("?")[0]?.split("/") ?? [];
    if (id === "") return method === "POST" ? create(kept, JSON.parse(body ?? "") as Case) : list(kept);
    const held = kept.get(id);
    if (!held) return refused("case-unknown", 404);
    if (action === "bring-back") {
      held.putAway = false;
      return saved(++held.revision);
    }
    if (held.putAway) return refused("case-put-away", 410);
    return method === "GET" ? json(held.document, 200, held.revision) : change(held, { method, path, body, tag });
  };
  const shop: FakeShop = {
    kept,
    asked: [],
    cut: false,
    paired: true,
    fetch: async (input, init) => {
      const method = init?.method ?? "GET";
      shop.asked.push(`${method} ${input}`);
      if (shop.cut) throw new TypeError("no network");
      if (!shop.paired) return refused("not-paired", 401);
      const headers = new Headers(init?.headers);
      return answer({ method, path: String(input), body: init?.body as string | undefined, tag: headers.get("if-match") ?? undefined });
    },
  };
  return shop;
}

export interface FakeDevice {
  readonly shelf: Shelf;
  readonly sync: Sync;
  readonly server: CaseServer;
  /** Runs what was put off, and all that comes of it. */
  readonly settle: () => Promise<void>;
  readonly restart: () => FakeDevice;
}

/** A device of the shop, with a clock of its own. */
export function fakeDevice(shop: FakeShop, name: string, store = memoryStore()): FakeDevice {
  let clock = Date.parse("2026-02-03T08:00:00Z");
  const due = new Map<number, () => void>();
  let timers = 0;
  const server = caseServer({ fetch: shop.fetch, device: () => name, language: () => "en", onNotPaired: () => sync.notPaired() });
  const shelf: Shelf = newShelf({ store, now: () => (clock += 10_000), onWaiting: (id) => sync.waiting(id) });
  const sync: Sync = newSync({
    shelf,
    server,
    timers: {
      set: (run) => {
        due.set(++timers, run);
        return timers;
      },
      clear: (timer) => due.delete(timer as number),
    },
  });
  const breathe = () => new Promise((resolve) => setTimeout(resolve));
  return {
    shelf,
    sync,
    server,
    settle: async () => {
      const now = [...due];
      for (const [timer, run] of now) if (due.delete(timer)) run();
      await breathe();
      await sync.idle();
      await breathe();
    },
    restart: () => fakeDevice(shop, name, store),
  };
}
