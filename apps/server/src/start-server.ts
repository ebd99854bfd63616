import { openStore } from "@halfturn/store";
import { createApp } from "./app/create-app.js";
import { lineLog } from "./app/log.js";
import type { ServerParts } from "./app/server-parts.js";
import { fillWithDemo } from "./demo/demo-shop.js";
import { changeFeed } from "./events/change-feed.js";
import { type Listening, listen } from "./http/listen.js";
import { LOOPBACK_NAMES } from "./http/own-host.js";
import { type OpenedLan, openLan } from "./lan/open-lan.js";
import { reportRenderer } from "./reports/report-renderer.js";
import { type ShopLocation, storeLocation } from "./shop-location.js";
import { webFiles } from "./web/web-files.js";

export interface ServerSettings extends ShopLocation {
  /** 0: any free one. */
  readonly port: number;
  /** Port for the local network, over HTTPS; null: this machine only. */
  readonly lanPort: number | null;
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
  /** Where devices of the local network find the shop; mostly none. */
  readonly lanAddresses: readonly string[];
  /** Where the data lie: the file, or the database's address without its password. */
  readonly place: string;
  /** Cases of the demonstration that were put in; mostly none. */
  readonly demoCases: number;
  /** Finishes what is being written, ends the streams, closes the database. */
  readonly stop: () => Promise<void>;
}

/** Opens the store and listens. Throws a StoreFault, or the listener's error where a port cannot be had. */
export async function startServer(settings: ServerSettings): Promise<RunningServer> {
  const { now, newId, version } = settings;
  const log = lineLog(settings.writeLog, now);
  const store = await openStore(storeLocation(settings));
  const feed = changeFeed();
  const reports = reportRenderer({ worker: new URL("./report-worker.js", import.meta.url) });
  const web = settings.web === null ? null : webFiles(settings.web);
  const listening: Listening[] = [];
  const stop = async (): Promise<void> => {
    feed.close();
    await Promise.all(listening.map((one) => one.stop()));
    reports.close();
    await store.close();
  };
  try {
    const demoCases = settings.demo ? await fillWithDemo(store, now) : 0;
    const parts: Omit<ServerParts, "lan" | "side" | "names"> = { store, feed, reports, web, log, now, newId, version };
    const lan = settings.lanPort === null ? null : await openLan(settings.folder, now);
    const lanAddresses = lan === null ? [] : await listenInLan(lan, settings.lanPort ?? 0);
    const home = createApp({ ...parts, lan: lan && { ...lan, addresses: lanAddresses }, side: "home", names: LOOPBACK_NAMES });
    const atHome = await listen(home, { host: "127.0.0.1", port: settings.port });
    listening.push(atHome);
    const address = `http://localhost:${atHome.port}`;

    async function listenInLan(opened: OpenedLan, lanPort: number): Promise<readonly string[]> {
      const app = createApp({ ...parts, lan: { ...opened, addresses: [] }, side: "lan", names: opened.names });
      const tls = { cert: opened.tls.chain, key: opened.tls.key };
      const inLan = await listen(app, { host: "0.0.0.0", port: lanPort, tls });
      listening.push(inLan);
      return opened.names.map((name) => `https://${name}:${inLan.port}`);
    }
    log({ event: "started", address, lanAddresses, database: store.engine });
    return {
      address,
      lanAddresses,
      place: store.place,
      demoCases,
      stop: async () => {
        await stop();
        log({ event: "stopped" });
      },
    };
  } catch (error) {
    await stop();
    throw error;
  }
}
