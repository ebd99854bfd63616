import { isLanguage, LANGUAGES, UNIT_SYSTEMS } from "@halfturn/words";
import { createRoute, z } from "@hono/zod-openapi";
import type { Context } from "hono";
import { type Api, addRoute } from "../app/add-route.js";
import type { ServerParts } from "../app/server-parts.js";
import { languageOfRequest, refuse } from "../http/refuse.js";
import type { ReportJob } from "../reports/render-report.js";
import { idParam, refused } from "./shared.js";

const language = z.enum(LANGUAGES).optional().openapi({ description: "Without it: the language that Accept-Language likes best." });
const units = z.enum(UNIT_SYSTEMS).default("metric").openapi({ description: "Units of lengths, distances and road speeds." });
const paper = z.enum(["a4", "letter"]).default("a4");
const file = z.string().openapi({ format: "binary" });

const pdfRoute = createRoute({
  method: "get",
  path: "/api/cases/{id}/report.pdf",
  summary: "The report of a case as an archival PDF",
  request: { params: idParam, query: z.object({ language, units, paper }) },
  responses: {
    200: { description: "The report.", content: { "application/pdf": { schema: file } } },
    ...refused(400, 404, 409, 410, 500, 503),
  },
});

const htmlRoute = createRoute({
  method: "get",
  path: "/api/cases/{id}/report.html",
  summary: "The report of a case as one HTML file",
  request: { params: idParam, query: z.object({ language, units }) },
  responses: { 200: { description: "The report.", content: { "text/html": { schema: file } } }, ...refused(400, 404, 409, 410, 500, 503) },
});

/** The report fetches nothing and runs nothing; its styles stand in it. */
const REPORT_POLICY = "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'";

export function addReportRoutes(app: Api, parts: ServerParts): void {
  addRoute(app, pdfRoute, (c) => {
    const { id } = c.req.valid("param");
    const asked = c.req.valid("query");
    return answer(c, id, { kind: "pdf", paper: asked.paper, units: asked.units, asked: asked.language }, parts);
  });
  addRoute(app, htmlRoute, (c) => {
    const { id } = c.req.valid("param");
    const asked = c.req.valid("query");
    return answer(c, id, { kind: "html", paper: "a4", units: asked.units, asked: asked.language }, parts);
  });
}

type Asked = Pick<ReportJob, "kind" | "paper" | "units"> & { readonly asked: string | undefined };

async function answer(
  c: Context,
  id: string,
  { kind, paper, units, asked }: Asked,
  { store, reports, now, version, log }: ServerParts,
): Promise<Response> {
  const read = await store.read(id);
  if (read.is === "unknown") return refuse(c, "case-unknown", { id });
  if (read.is === "put-away") return refuse(c, "case-put-away", { id, revision: read.revision });
  const made = await reports.render({
    document: read.held.document,
    kind,
    paper,
    units,
    language: asked !== undefined && isLanguage(asked) ? asked : languageOfRequest(c),
    date: now(),
    version,
  });
  if (!made.ok) {
    if (made.why === "nothing") return refuse(c, "nothing-to-report", { id });
    log({ event: "report-fault", case: id, error: made.error });
    return refuse(c, "report-failed", { id });
  }
  c.header("content-security-policy", REPORT_POLICY);
  c.header("cache-control", "no-store");
  c.header("content-disposition", `inline; filename="${id}.${kind}"`);
  return c.body(new Uint8Array(made.bytes), 200, { "content-type": kind === "pdf" ? "application/pdf" : "text/html; charset=utf-8" });
}
