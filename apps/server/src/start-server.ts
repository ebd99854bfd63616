import { createApp } from "./app/create-app.js";
import { lineLog } from "./app/log.js";
import type { ServerParts } from "./app/server-parts.js";
import { closeFolder } from "./close-folder.js";
import { fillWithDemo } from "./demo/demo-shop.js";
import { changeFeed } from "./events/change-feed.js";
import { followStore } from "./events/follow-store.js";
import { type ClaimedPort, claimPort } from "./http/claim-port.js";
import { LOOPBACK_NAMES } from "./http/own-host.js";
import { openLan } from "./lan/open-lan.js";
import { type OpenedShop, openShop } from "./open-shop.js";
import { reportRenderer } from "./reports/report-renderer.js";
import type { ShopLocation } from "./shop-location.js";
import { webFiles } from "./web/web-files.js";

export interface ServerSettings extends ShopLocation {
  /** 0: any free one. */
  readonly port: number;
  /** Port for the local network, over HTTPS; null: this machine only. */
  readonly lanPort: number | null;
  /** Folder of the built web app, which may appear later; null for none. */
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
  /** Whether other users of this machine may look into the folder of the data, and it was not for this program to close it. */
  readonly folderOpen: boolean;
  /** Cases of the demonstration that were put in; mostly none. */
  readonly demoCases: number;
  /** Requests that are being answered. */
  readonly unanswered: () => number;
  /** Finishes what is being written, ends the streams, closes the database. */
  readonly stop: () => Promise<void>;
}

/** Takes its ports first, so that a start which fails for one leaves nothing behind, then the store. Throws a StoreFault, or the listener's error. */
export async function startServer(settings: ServerSettings): Promise<RunningServer> {
  const ports = await claimPorts(settings);
  try {
    const shop = await openShop(settings);
    try {
      return await serve(settings, ports, shop);
    } catch (error) {
      await shop.close();
      throw error;
    }
  } catch (error) {
    await ports.stop();
    throw error;
  }
}

interface Ports {
  readonly home: ClaimedPort;
  readonly lan: ClaimedPort | null;
  readonly stop: () => Promise<unknown>;
}

async function claimPorts({ port, lanPort }: ServerSettings): Promise<Ports> {
  const home = await claimPort({ host: "127.0.0.1", port, secure: false });
  try {
    const lan = lanPort === null ? null : await claimPort({ host: "0.0.0.0", port: lanPort, secure: true });
    return { home, lan, stop: () => Promise.all([home.stop(), lan?.stop()]) };
  } catch (error) {
    await home.stop();
    throw error;
  }
}

async function serve(settings: ServerSettings, ports: Ports, { store, close }: OpenedShop): Promise<RunningServer> {
  const { now, newId, version } = settings;
  const log = lineLog(settings.writeLog, now);
  const feed = changeFeed();
  const reports = reportRenderer({ worker: new URL("./report-worker.js", import.meta.url) });
  const web = settings.web === null ? null : webFiles(settings.web);
  const demoCases = settings.demo ? await fillWithDemo(store, now) : 0;
  const parts: Omit<ServerParts, "lan" | "side" | "names"> = { store, feed, reports, web, log, now, newId, version };
  const lan = ports.lan === null ? null : await openLan(settings.folder, now);
  const lanAddresses = (lan?.names ?? []).map((name) => `https://${name}:${ports.lan?.port}`);
  const home = createApp({ ...parts, lan: lan && { ...lan, addresses: lanAddresses }, side: "home", names: LOOPBACK_NAMES });
  if (lan !== null) ports.lan?.answerBy(createApp({ ...parts, lan: { ...lan, addresses: [] }, side: "lan", names: lan.names }), lan.tls);
  const folderOpen = settings.database === null && closeFolder(settings.folder) === "open";
  ports.home.answerBy(home);
  const address = `http://localhost:${ports.home.port}`;
  log({ event: "started", address, lanAddresses, database: store.engine });
  // Last: what cannot start any more leaves nothing running.
  const unfollow = followStore(store, feed);
  return {
    address,
    lanAddresses,
    place: store.place,
    folderOpen,
    demoCases,
    unanswered: () => ports.home.unanswered() + (ports.lan?.unanswered() ?? 0),
    stop: async () => {
      unfollow();
      feed.close();
      await ports.stop();
      reports.close();
      await close();
      log({ event: "stopped" });
    },
  };
}
