import { createRoute, z } from "@hono/zod-openapi";
import { type Api, addRoute } from "../app/add-route.js";
import type { ServerParts } from "../app/server-parts.js";
import { json, refused } from "./shared.js";

const health = z.object({ status: z.literal("ok"), version: z.string(), database: z.enum(["sqlite", "postgres"]) }).meta({ id: "Health" });

const route = createRoute({
  method: "get",
  path: "/api/health",
  summary: "Whether the server and its database answer",
  responses: { 200: { description: "Both do.", content: json(health) }, ...refused(503) },
});

export function addHealthRoute(app: Api, { store, version }: ServerParts): void {
  addRoute(app, route, async (c) => {
    await store.latest();
    c.header("cache-control", "no-store");
    return c.json({ status: "ok" as const, version, database: store.engine }, 200);
  });
}
