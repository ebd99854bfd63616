import { DEVICE_HEADER, MAX_DEVICE_NAME } from "@halfturn/exchange";
import type { Context } from "hono";

/** A device that does not say its name. */
const NAMELESS = "-";
const CONTROL = /\p{C}/u;

/** The name that a device gives itself, decoded; null where it cannot be read. */
export function deviceName(c: Context): string | null {
  const header = c.req.header(DEVICE_HEADER)?.trim();
  if (header === undefined || header === "") return NAMELESS;
  try {
    const name = decodeURIComponent(header).trim();
    return [...name].length > MAX_DEVICE_NAME || CONTROL.test(name) ? null : name || NAMELESS;
  } catch {
    return null;
  }
}
