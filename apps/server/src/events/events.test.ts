import { afterEach, beforeEach, expect, test } from "vitest";
import { openShop, type Shop, sampleCase } from "../shop.test-support.js";

let shop: Shop;
beforeEach(async () => {
  shop = await openShop();
});
afterEach(() => shop.remove());

interface Told {
  readonly event: string;
  readonly id: string | undefined;
  readonly data: unknown;
}

/** Reads a stream until it has told so much, then leaves it. */
async function listen(
  count: number,
  headers: Record<string, string> = {},
  meanwhile: () => Promise<unknown> = async () => undefined,
): Promise<readonly Told[]> {
  const answer = await shop.ask("/api/events", { headers });
  expect(answer.headers.get("content-type")).toContain("text/event-stream");
  const reader = (answer.body as ReadableStream<Uint8Array>).getReader();
  let text = "";
  const told = (): readonly Told[] =>
    text
      .split("\n\n")
      .slice(0, -1)
      .map((block) => {
        const field = (name: string): string | undefined => new RegExp(`^${name}: (.*)$`, "m").exec(block)?.[1];
        return { event: field("event") ?? "", id: field("id"), data: JSON.parse(field("data") ?? "null") };
      });
  const work = meanwhile();
  while (told().length < count) {
    const { done, value } = await reader.read();
    if (done) break;
    text += new TextDecoder().decode(value);
  }
  await work;
  await reader.cancel();
  return told();
}

test("who begins to listen is told to read the list, then every change as it happens", async () => {
  await shop.take(sampleCase("before"));
  const told = await listen(3, {}, async () => {
    await shop.take(sampleCase("new"));
    await shop.ask("/api/cases/new", { method: "DELETE", headers: { "if-match": '"1"', "x-halfturn-device": "Office" } });
  });
  expect(told.map(({ event, data }) => [event, data])).toEqual([
    ["fresh", {}],
    ["case", { id: "new", revision: 1, savedBy: "-", kind: "saved" }],
    ["case", { id: "new", revision: 2, savedBy: "Office", kind: "removed" }],
  ]);
});

test("who comes back after a break is told what was missed, and nothing twice", async () => {
  await shop.take(sampleCase("a"));
  const [first] = await listen(1, { "last-event-id": "0" });
  expect(first).toMatchObject({ event: "case", data: { id: "a" } });
  await shop.take(sampleCase("b"));
  await shop.take(sampleCase("c"));
  const missed = await listen(2, { "last-event-id": first?.id ?? "" });
  expect(missed.map(({ data }) => (data as { id: string }).id)).toEqual(["b", "c"]);
});

test.each(["99", "x", "-1", "1.5"])("a number that was never told, %s, begins anew", async (lastEventId) => {
  await shop.take(sampleCase("a"));
  expect((await listen(1, { "last-event-id": lastEventId }))[0]?.event).toBe("fresh");
});

test("a save that was set aside is told to nobody", async () => {
  await shop.take(sampleCase("a"));
  const put = (notes: string) =>
    shop.ask("/api/cases/a", { method: "PUT", headers: { "if-match": '"1"' }, body: JSON.stringify(sampleCase("a", { notes })) });
  await put("one");
  await put("two");
  await shop.take(sampleCase("b"));
  const told = await listen(3, { "last-event-id": "0" });
  expect(told.map(({ data }) => [(data as { id: string }).id, (data as { revision: number }).revision])).toEqual([
    ["a", 1],
    ["a", 2],
    ["b", 1],
  ]);
});

test("streams end when the server stops", async () => {
  const answer = await shop.ask("/api/events");
  const reader = (answer.body as ReadableStream<Uint8Array>).getReader();
  await reader.read();
  shop.parts.feed.close();
  expect((await reader.read()).done).toBe(true);
  expect((await shop.ask("/api/events")).status).toBe(503);
});
