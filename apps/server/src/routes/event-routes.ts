import { caseEvent } from "@halfturn/exchange";
import { createRoute, z } from "@hono/zod-openapi";
import type { Context } from "hono";
import { type SSEStreamingApi, streamSSE } from "hono/streaming";
import { type Api, addRoute } from "../app/add-route.js";
import { errorText } from "../app/log.js";
import type { ServerParts } from "../app/server-parts.js";
import { refuse } from "../http/refuse.js";
import { pairedDeviceOf } from "../lan/access.js";
import { refused } from "./shared.js";

const HEARTBEAT_MS = 15_000;
const RETRY_MS = 2000;
/** Whoever missed more than this reads the list anew. */
const MOST_MISSED = 500;
const MOST_LISTENERS = 200;

const route = createRoute({
  method: "get",
  path: "/api/events",
  summary: "A stream of server-sent events: `case` for every change, `fresh` when the list must be read anew, `heartbeat` every 15 s",
  request: { headers: z.object({ "last-event-id": z.string().max(20).optional() }) },
  responses: {
    200: {
      description: "Never ends by itself. The id of an event goes back as Last-Event-ID after a break.",
      content: { "text/event-stream": { schema: caseEvent } },
    },
    ...refused(400, 503),
  },
});

export function addEventRoutes(app: Api, parts: ServerParts): void {
  const { store, feed, log } = parts;
  addRoute(app, route, async (c) => {
    if (feed.closed()) return refuse(c, "stopping", {});
    if (feed.listeners() >= MOST_LISTENERS) return refuse(c, "too-many-listeners", { limit: MOST_LISTENERS });
    const latest = await store.latest();
    const lastSeen = Number(c.req.header("last-event-id") ?? Number.NaN);
    return streamSSE(
      c,
      (stream) => tell(stream, { ...parts, welcome: welcomeOf(c, parts) }, lastSeen, latest),
      async (error) => log({ event: "stream-fault", error: errorText(error) }),
    );
  });
}

interface Telling extends ServerParts {
  readonly welcome: () => Promise<boolean>;
}

/** Whether who listens may go on: a device of the local network may be sent away while it does. */
function welcomeOf(c: Context, { store }: ServerParts): Telling["welcome"] {
  const device = pairedDeviceOf(c);
  if (device === undefined) return async () => true;
  return async () => (await store.devices.list()).some(({ id }) => id === device.id);
}

/** Tells what happened after `lastSeen`, or from now on where that is no number that was ever told. */
async function tell(stream: SSEStreamingApi, { store, feed, welcome }: Telling, lastSeen: number, latest: number): Promise<void> {
  const gone = new AbortController();
  stream.onAbort(() => gone.abort());
  const resumes = Number.isInteger(lastSeen) && lastSeen >= 0 && lastSeen <= latest;
  let told = resumes ? lastSeen : latest;
  const fresh = (): Promise<void> => stream.writeSSE({ event: "fresh", id: String(told), retry: RETRY_MS, data: "{}" });
  if (!resumes || latest - told > MOST_MISSED) {
    told = latest;
    await fresh();
  }
  while (!gone.signal.aborted && !feed.closed() && (await welcome())) {
    const changes = await store.changesAfter(told, MOST_MISSED);
    for (const { sequence, event } of changes) {
      await stream.writeSSE({ event: "case", id: String(sequence), data: JSON.stringify(event) });
      told = sequence;
    }
    if (changes.length > 0) continue;
    const woken = await wait(feed, gone.signal);
    if (!woken && !gone.signal.aborted) await stream.writeSSE({ event: "heartbeat", data: "{}" });
  }
}

/** Waits for a change; false when the time for a heartbeat came first. */
async function wait(feed: ServerParts["feed"], signal: AbortSignal): Promise<boolean> {
  const started = performance.now();
  await feed.next(HEARTBEAT_MS, signal);
  return performance.now() - started < HEARTBEAT_MS - 1;
}
