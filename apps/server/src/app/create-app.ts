import { StoreFault } from "@halfturn/store";
import { OpenAPIHono } from "@hono/zod-openapi";
import { compress } from "hono/compress";
import { HTTPException } from "hono/http-exception";
import { ownHost } from "../http/own-host.js";
import { refuse, refuseForFault } from "../http/refuse.js";
import { securityHeaders } from "../http/security-headers.js";
import { lanAccess } from "../lan/access.js";
import { addAttachmentRoutes } from "../routes/attachment-routes.js";
import { addCaseRoutes } from "../routes/case-routes.js";
import { addEventRoutes } from "../routes/event-routes.js";
import { addExchangeRoutes } from "../routes/exchange-routes.js";
import { addHealthRoute } from "../routes/health-route.js";
import { addHistoryRoutes } from "../routes/history-routes.js";
import { addPairingRoutes } from "../routes/pairing-routes.js";
import { addReportRoutes } from "../routes/report-routes.js";
import { serveWeb } from "../web/serve-web.js";
import type { Api } from "./add-route.js";
import { errorText } from "./log.js";
import { requestLog } from "./request-log.js";
import type { ServerParts } from "./server-parts.js";

/** The whole server as a function from requests to answers; a socket is somebody else's matter. */
export function createApp(parts: ServerParts): Api {
  const app: Api = new OpenAPIHono({
    defaultHook: (result, c) => {
      if (result.success) return undefined;
      const first = result.error.issues[0];
      return refuse(c, "bad-request", { why: `${result.target} ${first?.path.join(".") ?? ""}`.trim() });
    },
  });
  app.use(requestLog(parts.log));
  app.use(securityHeaders);
  app.use(ownHost(parts.names));
  if (parts.side === "lan") app.use(lanAccess(parts));
  app.use("/api/cases/*", compress());
  app.use("/api/cases", compress());
  addHealthRoute(app, parts);
  addCaseRoutes(app, parts);
  addHistoryRoutes(app, parts);
  addAttachmentRoutes(app, parts);
  addReportRoutes(app, parts);
  addExchangeRoutes(app, parts);
  addEventRoutes(app, parts);
  addPairingRoutes(app, parts);
  app.doc31("/api/openapi.json", { openapi: "3.1.0", info: { title: "Halfturn", version: parts.version } });
  app.all("/api/*", (c) => refuse(c, "not-found", { what: c.req.path.slice(0, 200) }));
  app.all("/*", (c) => (parts.web === null ? refuse(c, "not-found", { what: c.req.path.slice(0, 200) }) : serveWeb(c, parts.web)));
  app.onError((error, c) => {
    if (error instanceof StoreFault) {
      parts.log({ event: "database-fault", code: error.code, error: errorText(error) });
      return refuseForFault(c, error);
    }
    // Whoever asked is gone in the middle of it: no fault of the server, and nobody there to read the answer.
    if ((error as NodeJS.ErrnoException).code === "ECONNRESET") return refuse(c, "bad-request", { why: "aborted" });
    if (error instanceof HTTPException && error.status < 500) return refuse(c, "bad-request", { why: error.message });
    parts.log({ event: "server-fault", path: c.req.path, error: errorText(error), stack: error.stack });
    return refuse(c, "server-fault", {});
  });
  return app;
}
