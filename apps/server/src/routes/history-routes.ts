import { caseHistory } from "@halfturn/exchange";
import { createRoute, z } from "@hono/zod-openapi";
import { type Api, addRoute } from "../app/add-route.js";
import type { ServerParts } from "../app/server-parts.js";
import { refuse } from "../http/refuse.js";
import { caseBody, idParam, json, refused } from "./shared.js";

const historyRoute = createRoute({
  method: "get",
  path: "/api/cases/{id}/history",
  summary: "Everything that was saved of a case, oldest first: who changed it and when",
  request: { params: idParam },
  responses: { 200: { description: "The history.", content: json(caseHistory) }, ...refused(400, 404, 503) },
});

const revisionRoute = createRoute({
  method: "get",
  path: "/api/cases/{id}/history/{revision}",
  summary: "The document of one revision",
  request: { params: idParam.extend({ revision: z.coerce.number().int().min(1).max(999_999_999) }) },
  responses: { 200: { description: "The document.", content: json(caseBody) }, ...refused(400, 404, 503) },
});

export function addHistoryRoutes(app: Api, { store }: ServerParts): void {
  addRoute(app, historyRoute, async (c) => {
    const { id } = c.req.valid("param");
    const history = await store.history(id);
    if (history === null) return refuse(c, "case-unknown", { id });
    c.header("cache-control", "no-store");
    return c.json({ id, revisions: [...history.revisions] }, 200);
  });
  addRoute(app, revisionRoute, async (c) => {
    const { id, revision } = c.req.valid("param");
    const kept = await store.revision(id, revision);
    if (kept === null) return refuse(c, "revision-unknown", { id, revision });
    // What was saved once never changes.
    c.header("cache-control", "private, max-age=31536000, immutable");
    return c.body(JSON.stringify(kept.document), 200, { "content-type": "application/json" });
  });
}
