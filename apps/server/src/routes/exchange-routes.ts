import { serialise } from "@halfturn/casefile";
import { caseRevision } from "@halfturn/exchange";
import { createRoute, z } from "@hono/zod-openapi";
import { type Api, addRoute } from "../app/add-route.js";
import type { ServerParts } from "../app/server-parts.js";
import { refuse } from "../http/refuse.js";
import { answerSaved } from "./answer-saved.js";
import { readCaseBody } from "./read-case-body.js";
import { by, caseBody, deviceHeader, idParam, json, refused } from "./shared.js";

const exportRoute = createRoute({
  method: "get",
  path: "/api/cases/{id}/export",
  summary: "The case file, to keep or to hand on",
  request: { params: idParam },
  responses: { 200: { description: "The file.", content: json(caseBody) }, ...refused(400, 404, 410, 503) },
});

const importRoute = createRoute({
  method: "post",
  path: "/api/import",
  summary: "Take up a case file; `as=copy` gives it an id of its own",
  request: { headers: deviceHeader, query: z.object({ as: z.enum(["itself", "copy"]).default("itself") }) },
  responses: {
    201: { description: "Taken up; Location says where.", content: json(caseRevision) },
    ...refused(400, 409, 410, 413, 422, 503, 507),
  },
});

export function addExchangeRoutes(app: Api, parts: ServerParts): void {
  const { store, feed, newId } = parts;
  addRoute(app, exportRoute, async (c) => {
    const { id } = c.req.valid("param");
    const read = await store.read(id);
    if (read.is === "unknown") return refuse(c, "case-unknown", { id });
    if (read.is === "put-away") return refuse(c, "case-put-away", { id, revision: read.revision });
    c.header("cache-control", "no-store");
    c.header("content-disposition", `attachment; filename="${id}.halfturn.json"`);
    return c.body(serialise(read.held.document), 200, { "content-type": "application/json" });
  });
  addRoute(
    app,
    importRoute,
    async (c) => {
      const who = by(c, parts);
      if (who instanceof Response) return who;
      const read = await readCaseBody(c);
      if (read instanceof Response) return read;
      const document = c.req.valid("query").as === "copy" ? { ...read, id: newId() } : read;
      const { id } = document;
      const made = await store.create(document, who);
      if (!made.ok)
        return made.why === "exists" ? refuse(c, "case-exists", { id }) : refuse(c, "case-put-away", { id, revision: made.revision });
      feed.announce();
      c.header("location", `/api/cases/${encodeURIComponent(id)}`);
      return answerSaved(c, made.revision, 201);
    },
    { required: true, content: json(caseBody) },
  );
}
