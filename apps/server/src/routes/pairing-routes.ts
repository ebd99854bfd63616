import { lanState, pairedDevice, pairedDevices, pairingClaim, pairingOffer } from "@halfturn/exchange";
import { createRoute, z } from "@hono/zod-openapi";
import type { Context } from "hono";
import { renderSVG } from "uqr";
import { type Api, addRoute } from "../app/add-route.js";
import type { ServerParts } from "../app/server-parts.js";
import { readBody } from "../http/read-body.js";
import { refuse } from "../http/refuse.js";
import { remoteAddress } from "../http/remote-address.js";
import { rememberDevice } from "../lan/access.js";
import { newToken, tokenHashOf } from "../lan/pairing.js";
import { json, refused } from "./shared.js";

const MAX_CLAIM_BYTES = 2000;

const stateRoute = createRoute({
  method: "get",
  path: "/api/pairing",
  summary: "Whether and where the shop can be reached from the local network",
  responses: { 200: { description: "The addresses.", content: json(lanState) }, ...refused(403) },
});

const offerRoute = createRoute({
  method: "post",
  path: "/api/pairing",
  summary: "A fresh code that lets one device in, within five minutes; any earlier one is void",
  responses: { 201: { description: "The code.", content: json(pairingOffer) }, ...refused(403, 409) },
});

const claimRoute = createRoute({
  method: "post",
  path: "/api/pairing/claim",
  summary: "Be let in with a code; the answer's cookie is the device's key",
  responses: {
    201: { description: "Let in.", content: json(pairedDevice) },
    ...refused(400, 403, 413, 429, 503, 507),
  },
});

const certificateRoute = createRoute({
  method: "get",
  path: "/api/pairing/authority.crt",
  summary: "The certificate by which a device knows this shop, to be installed on it",
  responses: {
    200: { description: "PEM.", content: { "application/x-x509-ca-cert": { schema: z.string() } } },
    ...refused(404),
  },
});

const listRoute = createRoute({
  method: "get",
  path: "/api/devices",
  summary: "The devices that were let in, latest seen first",
  responses: { 200: { description: "The devices.", content: json(pairedDevices) }, ...refused(403, 503) },
});

const sendAwayRoute = createRoute({
  method: "delete",
  path: "/api/devices/{id}",
  summary: "Send a device away; its key opens nothing any more",
  request: { params: z.object({ id: z.string().min(1).max(60) }) },
  responses: { 204: { description: "Gone." }, ...refused(400, 403, 404, 503) },
});

export function addPairingRoutes(app: Api, parts: ServerParts): void {
  const { store, lan, feed } = parts;
  addRoute(app, stateRoute, (c) => c.json({ addresses: [...(lan?.addresses ?? [])] }, 200));
  addRoute(app, offerRoute, (c) => {
    const [first] = lan?.addresses ?? [];
    if (!lan || first === undefined) return refuse(c, "no-lan", {});
    const { code, expiresAt } = lan.pairing.begin();
    const address = `${first}/pair#${code}`;
    c.header("cache-control", "no-store");
    return c.json({ code, expiresAt: new Date(expiresAt).toISOString(), address, qr: renderSVG(address) }, 201);
  });
  addRoute(app, claimRoute, (c) => claim(c, parts), { required: true, content: json(pairingClaim) });
  addRoute(app, certificateRoute, (c) => {
    if (!lan) return refuse(c, "not-found", { what: c.req.path });
    return c.body(lan.certificate, 200, { "content-type": "application/x-x509-ca-cert", "cache-control": "no-cache" });
  });
  addRoute(app, listRoute, async (c) => {
    c.header("cache-control", "no-store");
    return c.json({ devices: [...(await store.devices.list())] }, 200);
  });
  addRoute(app, sendAwayRoute, async (c) => {
    const { id } = c.req.valid("param");
    if (!(await store.devices.sendAway(id))) return refuse(c, "device-unknown", { id });
    // Its stream of events ends now, and not at the next heartbeat.
    feed.announce();
    return c.body(null, 204);
  });
}

async function claim(c: Context, { store, lan, newId, now, log }: ServerParts): Promise<Response> {
  const body = await readBody(c, MAX_CLAIM_BYTES);
  if (!body.ok) return refuse(c, "body-too-large", { limit: MAX_CLAIM_BYTES });
  const claimed = pairingClaim.safeParse(jsonOrNull(new TextDecoder().decode(body.bytes)));
  if (!claimed.success) return refuse(c, "bad-request", { why: "code, device" });
  const { code, device: name } = claimed.data;
  const answer = lan?.pairing.claim(code, remoteAddress(c)) ?? "refused";
  if (answer !== "granted") {
    log({ event: "pairing-refused", why: answer });
    return refuse(c, answer === "refused" ? "code-refused" : "too-many-tries", {});
  }
  const token = newToken();
  const device = { id: newId(), name, pairedAt: now(), lastSeenAt: now() };
  await store.devices.add({ id: device.id, name, tokenHash: tokenHashOf(token) }, device.pairedAt);
  log({ event: "paired", device: name });
  rememberDevice(c, token);
  c.header("cache-control", "no-store");
  return c.json({ ...device, lastSeenAt: device.pairedAt }, 201);
}

function jsonOrNull(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
