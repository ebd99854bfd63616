import type { MiddlewareHandler } from "hono";

/** What a page of the app may do: use what this server gives, and nothing from anywhere else. */
export const PAGE_POLICY = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "media-src 'self' blob:",
  "object-src 'none'",
  "frame-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

/** What an answer that is no page may do if somebody opens it as one. */
export const DATA_POLICY = "default-src 'none'; frame-ancestors 'none'";

const PERMISSIONS =
  "camera=(self), microphone=(self), accelerometer=(self), gyroscope=(self), magnetometer=(self), geolocation=(), payment=(), usb=()";

/** Headers that every answer has; a route may have set a policy of its own. */
export const securityHeaders: MiddlewareHandler = async (c, next) => {
  await next();
  const { headers } = c.res;
  if (!headers.has("content-security-policy")) headers.set("content-security-policy", DATA_POLICY);
  headers.set("x-content-type-options", "nosniff");
  headers.set("referrer-policy", "no-referrer");
  headers.set("x-frame-options", "DENY");
  headers.set("cross-origin-opener-policy", "same-origin");
  headers.set("cross-origin-resource-policy", "same-origin");
  headers.set("permissions-policy", PERMISSIONS);
};
