import { createServer, type ServerOptions } from "node:http";
import { createServer as createTlsServer } from "node:https";
import type { AddressInfo } from "node:net";
import { getRequestListener } from "@hono/node-server";
import type { Api } from "../app/add-route.js";
import type { ServerCertificate } from "../lan/server-certificate.js";
import { stopListening } from "./stop-listening.js";

/** For how long a client may take its time, so that many slow ones do not hold the connections of the others. */
export interface Patience {
  /** Agreeing on a key, and saying what it wants. */
  readonly headersMs: number;
  /** Sending all of it: a picture over bad Wi-Fi, at the most. */
  readonly requestMs: number;
}

const PATIENCE: Patience = { headersMs: 10_000, requestMs: 180_000 };
/** A limit is held to a fifth of itself. */
const CHECKS = 5;
/** More come from no shop; each side has its own, so that the network cannot shut this machine out. */
const MOST_CONNECTIONS = 500;

/** A port that is ours. Requests wait until the app answers them. */
export interface ClaimedPort {
  readonly port: number;
  /** `tls`: for a port that was claimed as a secure one. */
  readonly answerBy: (app: Api, tls?: ServerCertificate) => void;
  /** Requests that are being answered or still wait. */
  readonly unanswered: () => number;
  /** Finishes the answers that were begun; requests that still wait are refused. */
  readonly stop: () => Promise<void>;
}

export interface PortSettings {
  readonly host: string;
  /** 0: any free one. */
  readonly port: number;
  /** HTTPS. */
  readonly secure: boolean;
  readonly patience?: Patience;
}

/** Takes a port before anything else is touched: a start that fails for it leaves nothing behind. Throws the listener's error where the port cannot be had. */
export async function claimPort({ host, port, secure, patience = PATIENCE }: PortSettings): Promise<ClaimedPort> {
  let answerBy: (app: Api | null) => void = () => undefined;
  const ready = new Promise<Api | null>((resolve) => {
    answerBy = resolve;
  });
  const listener = getRequestListener(async (request, env) => (await ready)?.fetch(request, env) ?? new Response(null, { status: 503 }));
  const options: ServerOptions = {
    headersTimeout: patience.headersMs,
    requestTimeout: patience.requestMs,
    connectionsCheckingInterval: patience.headersMs / CHECKS,
  };
  const secured = secure ? createTlsServer({ ...options, minVersion: "TLSv1.2", handshakeTimeout: patience.headersMs }, listener) : null;
  const server = secured ?? createServer(options, listener);
  server.maxConnections = MOST_CONNECTIONS;
  const { unanswered, stop } = stopListening(server);
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, host, resolve);
  });
  return {
    port: (server.address() as AddressInfo).port,
    answerBy: (app, tls) => {
      if (tls !== undefined) secured?.setSecureContext({ cert: tls.chain, key: tls.key, minVersion: "TLSv1.2" });
      answerBy(app);
    },
    unanswered,
    stop: () => {
      answerBy(null);
      return stop();
    },
  };
}
