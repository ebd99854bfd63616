import { caseList, caseRevision } from "@halfturn/exchange";
import { createRoute, z } from "@hono/zod-openapi";
import type { Context } from "hono";
import { type Api, addRoute } from "../app/add-route.js";
import type { ServerParts } from "../app/server-parts.js";
import { revisionOfTag, tagOf } from "../http/entity-tag.js";
import { refuse } from "../http/refuse.js";
import { answerConflict, answerSaved } from "./answer-saved.js";
import { readCaseBody } from "./read-case-body.js";
import { by, caseBody, deviceHeader, idParam, json, refused } from "./shared.js";

const held = z.object({ revision: z.int(), savedAt: z.string(), savedBy: z.string(), document: caseBody }).meta({ id: "HeldCase" });
const conflict = z.object({ current: held, setAside: caseRevision }).meta({ id: "SaveConflict" });
const tagHeader = deviceHeader.extend({
  "if-match": z.string().optional().openapi({ description: "The ETag of the revision that was changed. Without it: 428." }),
});
const saved = { description: "Done; the ETag names the new revision.", content: json(caseRevision) };
/** Bodies are read by hand, to answer with every problem at once; the document says what they are. */
const body = { required: true, content: json(caseBody) };

const listRoute = createRoute({
  method: "get",
  path: "/api/cases",
  summary: "Cases, newest change first; with `q` those in which each word asked for begins a word",
  request: {
    query: z.object({
      q: z.string().max(1000).default(""),
      limit: z.coerce.number().int().min(1).max(200).default(50),
      after: z.string().max(20).optional(),
      "put-away": z.enum(["true", "false"]).default("false").openapi({ description: "true: the cases that were put away instead" }),
    }),
  },
  responses: { 200: { description: "A page of the list.", content: json(caseList) }, ...refused(400, 503) },
});

const createCaseRoute = createRoute({
  method: "post",
  path: "/api/cases",
  summary: "Take up a case",
  request: { headers: deviceHeader },
  responses: { 201: saved, ...refused(400, 409, 410, 413, 422, 503, 507) },
});

const readRoute = createRoute({
  method: "get",
  path: "/api/cases/{id}",
  summary: "A case, as its file spells it",
  request: { params: idParam },
  responses: {
    200: { description: "The document; the ETag names its revision.", content: json(caseBody) },
    304: { description: "Still the revision that If-None-Match names." },
    ...refused(400, 404, 410, 503),
  },
});

const saveRoute = createRoute({
  method: "put",
  path: "/api/cases/{id}",
  summary: "Save a case over the revision that was changed",
  request: { params: idParam, headers: tagHeader },
  responses: {
    200: saved,
    412: { description: "Another save came first; yours is kept in the history.", content: json(conflict) },
    ...refused(400, 404, 410, 413, 422, 428, 503, 507),
  },
});

const putAwayRoute = createRoute({
  method: "delete",
  path: "/api/cases/{id}",
  summary: "Put a case away; nothing is deleted",
  request: { params: idParam, headers: tagHeader },
  responses: {
    200: saved,
    412: { description: "It has been changed since.", content: json(conflict.omit({ setAside: true })) },
    ...refused(400, 404, 410, 428, 503, 507),
  },
});

const bringBackRoute = createRoute({
  method: "post",
  path: "/api/cases/{id}/bring-back",
  summary: "Bring back a case that was put away",
  request: { params: idParam, headers: deviceHeader },
  responses: { 200: saved, ...refused(400, 404, 409, 503, 507) },
});

export function addCaseRoutes(app: Api, parts: ServerParts): void {
  const { store, feed } = parts;
  addRoute(app, listRoute, async (c) => {
    const { q, limit, after, "put-away": putAway } = c.req.valid("query");
    c.header("cache-control", "no-store");
    const page = await store.list({ words: q, limit, after: after ?? null, putAway: putAway === "true" });
    return c.json({ cases: [...page.cases], next: page.next }, 200);
  });
  addRoute(
    app,
    createCaseRoute,
    async (c) => {
      const who = by(c, parts);
      if (who instanceof Response) return who;
      const document = await readCaseBody(c);
      if (document instanceof Response) return document;
      const made = await store.create(document, who);
      if (!made.ok) {
        const { id } = document;
        return made.why === "exists" ? refuse(c, "case-exists", { id }) : refuse(c, "case-put-away", { id, revision: made.revision });
      }
      feed.announce();
      c.header("location", `/api/cases/${encodeURIComponent(document.id)}`);
      return answerSaved(c, made.revision, 201);
    },
    body,
  );
  addRoute(app, readRoute, async (c) => {
    const { id } = c.req.valid("param");
    const read = await store.read(id);
    if (read.is === "unknown") return refuse(c, "case-unknown", { id });
    if (read.is === "put-away") return refuse(c, "case-put-away", { id, revision: read.revision });
    const tag = tagOf(read.held.revision);
    c.header("etag", tag);
    c.header("cache-control", "private, no-cache");
    if (revisionOfTag(c.req.header("if-none-match") ?? "") === read.held.revision) return c.body(null, 304);
    return c.body(JSON.stringify(read.held.document), 200, { "content-type": "application/json" });
  });
  addRoute(app, saveRoute, (c) => saveCase(c, c.req.valid("param").id, parts), body);
  addRoute(app, putAwayRoute, (c) => putAway(c, c.req.valid("param").id, parts));
  addRoute(app, bringBackRoute, async (c) => {
    const { id } = c.req.valid("param");
    const who = by(c, parts);
    if (who instanceof Response) return who;
    const back = await store.bringBack(id, who);
    if (!back.ok) return refuse(c, back.why === "unknown" ? "case-unknown" : "case-not-put-away", { id });
    feed.announce();
    return answerSaved(c, back.revision, 200);
  });
}

/** The revision that a change was made to, from If-Match. */
function changedRevision(c: Context): number | Response {
  const tag = c.req.header("if-match");
  if (tag === undefined) return refuse(c, "tag-missing", { example: tagOf(1) });
  return revisionOfTag(tag) ?? refuse(c, "tag-unreadable", { got: tag.slice(0, 60) });
}

async function saveCase(c: Context, id: string, parts: ServerParts): Promise<Response> {
  const document = await readCaseBody(c);
  const over = changedRevision(c);
  if (over instanceof Response) return over;
  const who = by(c, parts);
  if (who instanceof Response) return who;
  if (document instanceof Response) return document;
  if (document.id !== id) return refuse(c, "id-differs", { address: id, document: document.id }, { path: "id" });
  const saved = await parts.store.save(document, over, who);
  if (saved.ok) {
    parts.feed.announce();
    return answerSaved(c, saved.revision, 200);
  }
  if (saved.why === "unknown") return refuse(c, "case-unknown", { id });
  if (saved.why === "conflict") return answerConflict(c, { current: saved.current, setAside: saved.setAside });
  return refuse(c, "case-put-away", { id, revision: saved.revision, setAside: saved.setAside.revision });
}

async function putAway(c: Context, id: string, parts: ServerParts): Promise<Response> {
  const over = changedRevision(c);
  if (over instanceof Response) return over;
  const who = by(c, parts);
  if (who instanceof Response) return who;
  const done = await parts.store.putAway(id, over, who);
  if (done.ok) {
    parts.feed.announce();
    return answerSaved(c, done.revision, 200);
  }
  if (done.why === "unknown") return refuse(c, "case-unknown", { id });
  if (done.why === "conflict") return answerConflict(c, { current: done.current });
  return refuse(c, "case-put-away", { id, revision: done.revision });
}
