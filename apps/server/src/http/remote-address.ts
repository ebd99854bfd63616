import type { HttpBindings } from "@hono/node-server";
import type { Context } from "hono";

/** Where a request comes from; empty where it came through no socket. What a header says of it is not asked: anybody can write one. */
export const remoteAddress = (c: Context): string => (c.env as Partial<HttpBindings> | undefined)?.incoming?.socket.remoteAddress ?? "";
