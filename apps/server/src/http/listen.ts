import { createServer } from "node:http";
import { createServer as createTlsServer } from "node:https";
import type { AddressInfo } from "node:net";
import { getRequestListener } from "@hono/node-server";
import type { Api } from "../app/add-route.js";
import { stopListening } from "./stop-listening.js";

export interface Listening {
  readonly port: number;
  /** Finishes the answers that were begun. */
  readonly stop: () => Promise<void>;
}

export interface ListenSettings {
  readonly host: string;
  /** 0: any free one. */
  readonly port: number;
  /** PEM; without it the server speaks plain HTTP. */
  readonly tls?: { readonly cert: string; readonly key: string };
}

/** Puts the app behind a socket. Throws the listener's error where the port cannot be had. */
export async function listen(app: Api, { host, port, tls }: ListenSettings): Promise<Listening> {
  const listener = getRequestListener(app.fetch);
  const server = tls ? createTlsServer({ ...tls, minVersion: "TLSv1.2" }, listener) : createServer(listener);
  const stop = stopListening(server);
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, host, resolve);
  });
  return { port: (server.address() as AddressInfo).port, stop };
}
