import type { OpenAPIHono, RouteConfig, RouteHandler } from "@hono/zod-openapi";

export type Api = OpenAPIHono;

/** What a handler is given: the checked parameters by `c.req.valid`. */
type RouteContext<Route extends RouteConfig> = Parameters<RouteHandler<Route>>[0];

/**
 * Adds a route to the server and its description to the document. `body` describes a body that the handler reads by hand, because the library's own reader would
 * neither limit its size nor answer with every problem at once.
 */
export function addRoute<Route extends RouteConfig>(
  app: Api,
  route: Route,
  handle: (c: RouteContext<Route>) => Response | Promise<Response>,
  body?: NonNullable<NonNullable<RouteConfig["request"]>["body"]>,
): void {
  // Answers are plain responses: their shapes stand in the document, and the tests hold the two together.
  const handler = handle as unknown as RouteHandler<Route>;
  if (body === undefined) {
    app.openapi(route, handler);
    return;
  }
  app.openapi({ ...route, hide: true }, handler);
  app.openAPIRegistry.registerPath({ ...route, request: { ...route.request, body } });
}
