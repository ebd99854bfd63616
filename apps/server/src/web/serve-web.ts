import type { Context } from "hono";
import { refuse } from "../http/refuse.js";
import { PAGE_POLICY } from "../http/security-headers.js";
import { INDEX, type WebFile, type WebFiles } from "./web-files.js";

const FOREVER = "public, max-age=31536000, immutable";
/** Kept, but asked after each time: a new build must be seen at once. */
const ASK_FIRST = "no-cache";

/** A file of the app, or its index for every address of a page: the app's own router reads the rest. */
export function serveWeb(c: Context, files: WebFiles): Response {
  if (c.req.method !== "GET" && c.req.method !== "HEAD") return refuse(c, "method-not-allowed", { method: c.req.method });
  const path = new URL(c.req.url).pathname;
  const asked = files.file(path === "/" ? INDEX : path);
  if (asked !== null) return send(c, asked);
  if (!isPage(path)) return refuse(c, "not-found", { what: path.slice(0, 200) });
  const index = files.file(INDEX);
  return index === null ? refuse(c, "app-missing", {}) : send(c, index);
}

/** A missing script must not come as a page. */
const isPage = (path: string): boolean => !path.startsWith("/assets/") && !/\.[a-z0-9]+$/i.test(path);

function send(c: Context, file: WebFile): Response {
  const zipped = file.gzip !== null && /\bgzip\b/.test(c.req.header("accept-encoding") ?? "");
  c.header("content-type", file.type);
  c.header("cache-control", file.immutable ? FOREVER : ASK_FIRST);
  c.header("content-security-policy", PAGE_POLICY);
  if (file.gzip !== null) c.header("vary", "Accept-Encoding");
  if (zipped) c.header("content-encoding", "gzip");
  return c.body(zipped && file.gzip ? file.gzip : file.content);
}
