import type { MiddlewareHandler } from "hono";
import { refuse } from "./refuse.js";

/** Names of this machine that no name server can point elsewhere. */
export const LOOPBACK_NAMES: readonly string[] = ["localhost", "127.0.0.1", "[::1]"];

/**
 * Answers only requests for this server's own names, and none from the page of another site: a name that an attacker's server points at this machine
 * (DNS rebinding) arrives with that name, and another site's page says its origin.
 */
export const ownHost =
  (names: readonly string[]): MiddlewareHandler =>
  async (c, next) => {
    const url = new URL(c.req.url);
    const host = c.req.header("host") ?? url.host;
    if (!names.includes(nameOf(host))) return refuse(c, "host-refused", { host: host.slice(0, 100) });
    const origin = c.req.header("origin");
    if (origin !== undefined && !isOwn(origin, host)) return refuse(c, "origin-refused", { origin: origin.slice(0, 100) });
    if (origin === undefined && c.req.header("sec-fetch-site") === "cross-site" && c.req.header("sec-fetch-mode") !== "navigate")
      return refuse(c, "origin-refused", { origin: "another site" });
    return next();
  };

const nameOf = (host: string): string => host.toLowerCase().replace(/:\d+$/, "");

const isOwn = (origin: string, host: string): boolean => {
  try {
    return new URL(origin).host === host.toLowerCase();
  } catch {
    return false;
  }
};
