import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { openStore } from "@halfturn/store";
import { getRequestListener } from "@hono/node-server";
import { createApp } from "./app/create-app.js";
import { lineLog } from "./app/log.js";
import { fillWithDemo } from "./demo/demo-shop.js";
import { changeFeed } from "./events/change-feed.js";
import { LOOPBACK_NAMES } from "./http/own-host.js";
import { stopListening } from "./http/stop-listening.js";
import { reportRenderer } from "./reports/report-renderer.js";
import { type ShopLocation, storeLocation } from "./shop-location.js";
import { webFiles } from "./web/web-files.js";

export interface ServerSettings extends ShopLocation {
  /** 0: any free one. */
  readonly port: number;
  /** The built web app; null for none. */
  readonly web: string | null;
  /** Whether an empty store is filled with the demonstration. */
  readonly demo: boolean;
  readonly version: string;
  readonly now: () => string;
  readonly newId: () => string;
  readonly writeLog: (line: string) => void;
}

export interface RunningServer {
  readonly address: string;
  /** Where the data lie: the file, or the database's address without its password. */
  readonly place: string;
  /** Cases of the demonstration that were put in; mostly none. */
  readonly demoCases: number;
  /** Finishes what is being written, ends the streams, closes the database. */
  readonly stop: () => Promise<void>;
}

/** Opens the store and listens on the loopback. Throws a StoreFault, or the listener's error where the port is taken. */
export async function startServer(settings: ServerSettings): Promise<RunningServer> {
  const log = lineLog(settings.writeLog, settings.now);
  const store = await openStore(storeLocation(settings));
  const feed = changeFeed();
  const reports = reportRenderer({ worker: new URL("./report-worker.js", import.meta.url) });
  const app = createApp({
    store,
    feed,
    web: settings.web === null ? null : webFiles(settings.web),
    log,
    reports,
    now: settings.now,
    newId: settings.newId,
    version: settings.version,
    names: LOOPBACK_NAMES,
  });
  const server = createServer(getRequestListener(app.fetch));
  const stop = stopListening(server);
  try {
    await new Promise<void>((resolve, reject) => {
      server.once("error", reject);
      server.listen(settings.port, "127.0.0.1", resolve);
    });
  } catch (error) {
    await store.close();
    throw error;
  }
  const demoCases = settings.demo ? await fillWithDemo(store, settings.now) : 0;
  const { port } = server.address() as AddressInfo;
  const address = `http://localhost:${port}`;
  log({ event: "started", address, database: store.engine });
  return {
    address,
    place: store.place,
    demoCases,
    stop: async () => {
      feed.close();
      await stop();
      reports.close();
      await store.close();
      log({ event: "stopped" });
    },
  };
}
