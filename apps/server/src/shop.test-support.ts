import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Case, newCase } from "@halfturn/casefile";
import { type CaseStore, openStore } from "@halfturn/store";
import type { Api } from "./app/add-route.js";
import { createApp } from "./app/create-app.js";
import type { LogEntry } from "./app/log.js";
import type { ServerParts } from "./app/server-parts.js";
import { changeFeed } from "./events/change-feed.js";
import { LOOPBACK_NAMES } from "./http/own-host.js";
import { renderReport } from "./reports/render-report.js";
import type { ServerSettings } from "./start-server.js";
import { webFiles } from "./web/web-files.js";

/** The whole server without a socket, over a real database in a folder of its own. */
export interface Shop {
  readonly app: Api;
  readonly store: CaseStore;
  readonly parts: ServerParts;
  readonly folder: string;
  readonly logged: readonly LogEntry[];
  readonly ask: (path: string, init?: RequestInit) => Promise<Response>;
  /** Takes up a case, and gives its entity tag. */
  readonly take: (document: Case) => Promise<string>;
  readonly remove: () => Promise<void>;
}

export const PAGE = "<!doctype html><title>Halfturn</title>";
export const SCRIPT = `console.log("${"a driveline ".repeat(100)}");`;

export async function openShop(change: (parts: ServerParts) => ServerParts = (parts) => parts): Promise<Shop> {
  const folder = mkdtempSync(join(tmpdir(), "halfturn-server-"));
  const web = join(folder, "web");
  mkdirSync(join(web, "assets"), { recursive: true });
  writeFileSync(join(web, "index.html"), PAGE);
  writeFileSync(join(web, "sw.js"), "self.skipWaiting();");
  writeFileSync(join(web, "assets", "index-Ab12_-Cd.js"), SCRIPT);
  writeFileSync(join(folder, "secret.txt"), "not for the web");
  const store = await openStore({ file: join(folder, "shop.sqlite") });
  const logged: LogEntry[] = [];
  let ids = 0;
  let seconds = 0;
  const parts = change({
    store,
    feed: changeFeed(),
    reports: { render: async (job) => renderReport(job), close: () => undefined },
    web: webFiles(web),
    log: (entry) => logged.push(entry),
    now: () => new Date(Date.UTC(2026, 4, 1, 8, 0, seconds++)).toISOString(),
    newId: () => `copy-${++ids}`,
    version: "0.0.0",
    lan: null,
    side: "home",
    names: LOOPBACK_NAMES,
  });
  const app = createApp(parts);
  const ask = async (path: string, init?: RequestInit): Promise<Response> => app.request(path, init);
  return {
    app,
    store,
    parts,
    folder,
    logged,
    ask,
    take: async (document) => (await ask("/api/cases", { method: "POST", body: JSON.stringify(document) })).headers.get("etag") ?? "",
    remove: async () => {
      parts.feed.close();
      await store.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

export const sampleCase = (id: string, more: Partial<Case> = {}): Case => ({
  ...newCase({ id, title: `Case ${id}`, layout: "one-piece", createdAt: "2026-05-01T07:00:00Z" }),
  ...more,
});

/** A server of its own on a free port of this machine, by its settings: without the app, the network and the invented cases. */
export const serverSettings = (more: Pick<ServerSettings, "folder"> & Partial<ServerSettings>): ServerSettings => ({
  port: 0,
  database: null,
  web: null,
  lanPort: null,
  demo: false,
  version: "0.0.0",
  now: () => new Date().toISOString(),
  newId: () => "copy",
  writeLog: () => undefined,
  ...more,
});
