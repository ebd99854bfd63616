import type { Case } from "@halfturn/casefile";
import { expect, test } from "vitest";
import { memoryStore, sample } from "../sync/shop.test-support.js";
import { changedPlaces } from "./changed-places.js";
import { firstRecord } from "./device-case.js";
import { type OpenCase, openCase } from "./open-case.js";

/** A case that is open, and a clock that is turned by hand. */
async function opened(start: Case = sample()) {
  const store = memoryStore();
  const clock = { now: Date.parse("2026-02-03T08:00:00Z") };
  await store.write(firstRecord(start, "2026-02-03T08:00:00Z"));
  const open = (await openCase(start.id, { store, now: () => clock.now, onWaiting: () => undefined })) as OpenCase;
  return { open, clock, store };
}

const titled = (title: string) => (document: Case) => ({ ...document, title });
const labelled = (label: string) => (document: Case) => ({ ...document, vehicle: { ...document.vehicle, label } });
const geared = (label: string) => (document: Case) => ({
  ...document,
  vehicle: { ...document.vehicle, gears: [...(document.vehicle?.gears ?? []), { label, ratio: 1 }] },
});

test("a word is one step, two fields are two", async () => {
  const { open, clock } = await opened();
  for (const letters of ["V", "Va", "Van"]) {
    clock.now += 200;
    open.edit(labelled(letters));
  }
  open.edit(titled("Rumble at 70"));
  open.undo();
  expect(open.record().document).toMatchObject({ title: "Rumble", vehicle: { label: "Van" } });
  open.undo();
  expect(open.record().document.vehicle).toEqual({});
  expect(open.canUndo()).toBe(false);
  open.redo();
  open.redo();
  expect(open.record().document).toMatchObject({ title: "Rumble at 70", vehicle: { label: "Van" } });
  expect(open.canRedo()).toBe(false);
});

test("after a rest, typing on in the same field is a step of its own", async () => {
  const { open, clock } = await opened();
  open.edit(titled("A"));
  clock.now += 5000;
  open.edit(titled("AB"));
  open.undo();
  expect(open.record().document.title).toBe("A");
});

test("two rows added in a hurry are two steps", async () => {
  const { open } = await opened();
  open.edit(geared("1"));
  open.edit(geared("2"));
  open.edit(geared("3"));
  open.undo();
  expect(open.record().document.vehicle?.gears?.map(({ label }) => label)).toEqual(["1", "2"]);
});

test("an edit after an undo takes the place of what was undone", async () => {
  const { open, clock } = await opened();
  for (const title of ["A", "B", "C"]) {
    clock.now += 5000;
    open.edit(titled(title));
  }
  open.undo();
  open.undo();
  open.edit(titled("D"));
  expect(open.canRedo()).toBe(false);
  open.undo();
  expect(open.record().document.title).toBe("A");
});

test("a change to the same object changes nothing, and is no step", async () => {
  const { open } = await opened();
  open.edit((document) => document);
  expect(open.canUndo()).toBe(false);
});

test("memory is never without bounds: of very many steps the last hundred can be taken back, over a restart as well", async () => {
  const { open, clock, store } = await opened();
  for (let k = 1; k <= 130; k++) {
    clock.now += 5000;
    open.edit(titled(String(k)));
  }
  await open.kept();
  const again = (await openCase("case-1", { store, now: () => clock.now, onWaiting: () => undefined })) as OpenCase;
  let steps = 0;
  while (again.canUndo()) {
    again.undo();
    steps += 1;
  }
  expect(steps).toBe(100);
  expect(again.record().document.title).toBe("30");
});

test("places that differ are named; a list that grew is one place, and a pair of numbers too", () => {
  expect(changedPlaces({ a: { b: 1, c: 2 } }, { a: { b: 1, c: 3 } })).toEqual(["a.c"]);
  expect(changedPlaces({ a: [1, 2] }, { a: [2, 3] })).toEqual(["a"]);
  expect(changedPlaces({ a: [{ b: 1 }] }, { a: [{ b: 1 }, { b: 2 }] })).toEqual(["a[]"]);
  expect(changedPlaces({ a: [{ b: 1 }] }, { a: [{ b: 2 }] })).toEqual(["a.0.b"]);
  expect(changedPlaces({}, { a: { b: 1 } })).toEqual(["a"]);
});
