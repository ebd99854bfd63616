import type { Device } from "@halfturn/store";
import type { Context, MiddlewareHandler } from "hono";
import { getCookie, setCookie } from "hono/cookie";
import type { ServerParts } from "../app/server-parts.js";
import { refuse } from "../http/refuse.js";
import { tokenHashOf } from "./pairing.js";

/** The prefix makes browsers refuse the cookie from anywhere but this very host, over HTTPS (RFC 6265bis, section 4.1.3.2). */
const COOKIE = "__Host-halfturn-device";
const YEAR_S = 31_536_000;
/** What a device may ask before it is let in. */
const OPEN: readonly string[] = ["/api/health", "/api/pairing/claim", "/api/pairing/authority.crt"];
/** What only this machine's own screen may do. */
const HOME_ONLY = /^\/api\/(devices|pairing(?!\/(claim|authority\.crt)$))/;

const PAIRED = new WeakMap<Request, Device>();

/** The device that asks, where it came through the local network. */
export const pairedDeviceOf = (c: Context): Device | undefined => PAIRED.get(c.req.raw);

export const rememberDevice = (c: Context, token: string): void =>
  setCookie(c, COOKIE, token, { path: "/", secure: true, httpOnly: true, sameSite: "Strict", maxAge: YEAR_S });

/** Lets devices of the local network in by their token. The app itself is open: there is nothing secret in it. */
export const lanAccess =
  ({ store, now }: ServerParts): MiddlewareHandler =>
  async (c, next) => {
    const { path } = c.req;
    if (!path.startsWith("/api/") || OPEN.includes(path)) return next();
    const token = getCookie(c, COOKIE);
    const device = token === undefined ? null : await store.devices.byToken(tokenHashOf(token), now());
    if (device === null) return refuse(c, "not-paired", {});
    if (HOME_ONLY.test(path)) return refuse(c, "home-only", {});
    PAIRED.set(c.req.raw, device);
    return next();
  };
