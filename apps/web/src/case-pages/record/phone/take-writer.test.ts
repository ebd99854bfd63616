import { expect, test } from "vitest";
import type { TakeChunk, TakeHead, TakeStore } from "./take-store.js";
import { newTakeWriter } from "./take-writer.js";

const HEAD: TakeHead = { id: "t", caseId: "c", kind: "motion", startedAt: "2026-05-04T07:30:00Z", rate: null };
const chunk = (value: number): TakeChunk => ({ z: Float64Array.of(value) });

/** A store with room for so many chunks. */
function storeWithRoom(room: number): TakeStore & { readonly rows: Map<number, TakeChunk>; readonly heads: Set<string> } {
  const rows = new Map<number, TakeChunk>();
  const heads = new Set<string>();
  return {
    rows,
    heads,
    begin: async ({ id }) => {
      if (room < 0) throw new DOMException("nothing is kept", "InvalidStateError");
      heads.add(id);
    },
    append: async (_, place, one) => {
      if (rows.size >= room) throw new DOMException("full", "QuotaExceededError");
      rows.set(place, one);
    },
    chunks: async () => [...rows.values()],
    of: async () => [],
    drop: async (id) => {
      rows.clear();
      heads.delete(id);
    },
  };
}

test.each([
  ["with room for all", 9],
  ["that gets full on the way", 2],
  ["that keeps nothing", -1],
])("a store %s gives the whole take back in its order", async (_, room) => {
  const store = storeWithRoom(room);
  const writer = newTakeWriter(store, HEAD);
  for (const value of [1, 2, 3, 4]) writer.append(chunk(value));
  expect((await writer.whole()).map(({ z }) => z?.[0])).toEqual([1, 2, 3, 4]);
  expect(store.rows.size).toBe(Math.max(0, Math.min(4, room)));
});

test("what was written is gone once the take is a file", async () => {
  const store = storeWithRoom(9);
  const writer = newTakeWriter(store, HEAD);
  writer.append(chunk(1));
  await writer.written();
  expect([store.heads.size, store.rows.size]).toEqual([1, 1]);
  await writer.drop();
  expect([store.heads.size, store.rows.size]).toEqual([0, 0]);
});
