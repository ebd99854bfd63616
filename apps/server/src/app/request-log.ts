import type { MiddlewareHandler } from "hono";
import { deviceName } from "../http/device-name.js";
import { pairedDeviceOf } from "../lan/access.js";
import type { Log } from "./log.js";

/** A line for each request that changes something or fails; reading is not worth a line. */
export const requestLog =
  (log: Log): MiddlewareHandler =>
  async (c, next) => {
    const started = performance.now();
    await next();
    const { method, path } = c.req;
    const { status } = c.res;
    const reads = method === "GET" || method === "HEAD";
    if (reads && status < 400) return;
    log({
      event: "request",
      method,
      path,
      status,
      ms: Math.round(performance.now() - started),
      device: pairedDeviceOf(c)?.name ?? deviceName(c),
    });
  };
