import type { Case } from "@halfturn/casefile";
import { expect, test } from "vitest";
import type { OpenCase } from "../device/open-case.js";
import { fakeDevice, fakeShop, memoryWindows, sample } from "./shop.test-support.js";

const titled = (title: string) => (document: Case) => ({ ...document, title });
const labelled = (label: string) => (document: Case) => ({ ...document, vehicle: { ...document.vehicle, label } });

/** Two devices that have the same case. */
async function shared() {
  const shop = fakeShop();
  const [phone, tablet] = [fakeDevice(shop, "phone"), fakeDevice(shop, "tablet")];
  const here = await phone.shelf.add(sample());
  await phone.settle();
  const held = await tablet.server.read("case-1");
  if (held.is !== "held") throw new Error(`the case was not sent: ${held.is}`);
  const there = await tablet.shelf.add(held.held.document, held.held);
  return { shop, phone, tablet, here, there };
}

const held = (shop: ReturnType<typeof fakeShop>) => shop.kept.get("case-1");
const waiting = (open: OpenCase) => open.record().waiting;

test("a new case and its edits reach the server, a burst of them in one save", async () => {
  const shop = fakeShop();
  const phone = fakeDevice(shop, "phone");
  const open = await phone.shelf.add(sample());
  await phone.settle();
  for (const title of ["R", "Ru", "Rum"]) open.edit(titled(title));
  await phone.settle();
  expect(held(shop)).toMatchObject({ document: { title: "Rum" }, revision: 2 });
  expect(shop.asked.filter((request) => request.startsWith("PUT"))).toHaveLength(1);
  expect(phone.sync.status()).toEqual({ connection: "reached", waiting: 0 });
});

test("edits without a network wait, survive a restart, and are sent on return", async () => {
  const { shop, phone, here } = await shared();
  shop.cut = true;
  here.edit(titled("Offline"));
  await phone.settle();
  expect(phone.sync.status()).toEqual({ connection: "unreachable", waiting: 1 });
  await here.kept();
  const again = phone.restart();
  const reopened = (await again.shelf.open("case-1")) as OpenCase;
  expect(reopened.record().document.title).toBe("Offline");
  reopened.undo();
  expect(reopened.record().document.title).toBe("Rumble");
  reopened.redo();
  shop.cut = false;
  await again.sync.catchUp();
  expect(held(shop)?.document.title).toBe("Offline");
  expect(again.sync.status()).toEqual({ connection: "reached", waiting: 0 });
});

test("what cannot be sent is tried again by itself", async () => {
  const { shop, phone, here } = await shared();
  shop.cut = true;
  here.edit(titled("Later"));
  await phone.settle();
  shop.cut = false;
  await phone.settle();
  await phone.settle();
  expect(held(shop)?.document.title).toBe("Later");
});

test("edits of two devices meet in one case on both", async () => {
  const { shop, phone, tablet, here, there } = await shared();
  here.edit(titled("From the phone"));
  there.edit(labelled("From the tablet"));
  await phone.settle();
  await tablet.settle();
  await phone.sync.told({ id: "case-1", revision: held(shop)?.revision ?? 0, savedBy: "tablet", kind: "saved" });
  for (const open of [here, there]) {
    expect(open.record()).toMatchObject({ document: { title: "From the phone", vehicle: { label: "From the tablet" } }, waiting: 0 });
    expect(open.record().conflicts).toEqual([]);
  }
  expect(held(shop)?.document).toEqual(here.record().document);
});

test("undo takes back one's own edit and leaves the other device's", async () => {
  const { phone, tablet, here, there } = await shared();
  here.edit(titled("Mine"));
  await phone.settle();
  there.edit(labelled("Theirs"));
  await tablet.settle();
  await phone.sync.catchUp();
  here.undo();
  expect(here.record().document).toMatchObject({ title: "Rumble", vehicle: { label: "Theirs" } });
  here.redo();
  expect(here.record().document).toMatchObject({ title: "Mine", vehicle: { label: "Theirs" } });
});

test("where both changed one field nothing is sent until somebody chose, and either choice goes through", async () => {
  for (const [side, title] of [
    ["mine", "Tablet"],
    ["theirs", "Phone"],
  ] as const) {
    const { shop, phone, tablet, here, there } = await shared();
    here.edit(titled("Phone"));
    await phone.settle();
    there.edit(titled("Tablet"));
    await tablet.settle();
    const [conflict, ...more] = there.record().conflicts;
    expect(more).toEqual([]);
    expect(conflict).toMatchObject({ path: "title", base: "Rumble", mine: "Tablet", theirs: "Phone" });
    expect(held(shop)?.document.title).toBe("Phone");
    if (conflict) there.choose(conflict, side);
    await tablet.settle();
    expect(held(shop)?.document.title).toBe(title);
    expect(waiting(there)).toBe(0);
  }
});

test("an event about our own save brings nothing back", async () => {
  const { shop, phone, here } = await shared();
  here.edit(titled("A"));
  const sending = phone.settle();
  await phone.sync.told({ id: "case-1", revision: 2, savedBy: "phone", kind: "saved" });
  await sending;
  here.edit(titled("AB"));
  await phone.settle();
  expect(here.record().conflicts).toEqual([]);
  expect(held(shop)?.document.title).toBe("AB");
});

test("what was edited while it was being sent is sent as well", async () => {
  const { shop, phone, here } = await shared();
  here.edit(titled("First"));
  const stop = here.subscribe(() => {
    if (here.record().waiting === 1) return;
    stop();
    here.edit(labelled("Second"));
  });
  await phone.settle();
  await phone.settle();
  expect(held(shop)?.document).toMatchObject({ title: "First", vehicle: { label: "Second" } });
});

test("a case that was put away elsewhere is put away here, and comes back when somebody works on it", async () => {
  const { shop, phone, tablet, here, there } = await shared();
  here.putAway(true);
  await phone.settle();
  expect(held(shop)?.putAway).toBe(true);
  await tablet.sync.catchUp();
  expect(there.record().putAway).toBe(1);
  there.putAway(false);
  there.edit(titled("Back on the lift"));
  await tablet.settle();
  expect(held(shop)).toMatchObject({ putAway: false, document: { title: "Back on the lift" } });
});

test("a case that the server refuses says why, and is tried again when it was changed", async () => {
  const { shop, phone, here } = await shared();
  here.edit(titled("not a title"));
  await phone.settle();
  expect(here.record()).toMatchObject({ refused: "case-refused", waiting: 1 });
  here.edit(titled("A title"));
  await phone.settle();
  expect(here.record()).toMatchObject({ refused: null, waiting: 0 });
  expect(held(shop)?.document.title).toBe("A title");
});

test("the same file opened on two devices is one case, and what differs is asked", async () => {
  const shop = fakeShop();
  const [phone, tablet] = [fakeDevice(shop, "phone"), fakeDevice(shop, "tablet")];
  await phone.shelf.add(sample());
  await phone.settle();
  const same = await tablet.shelf.add(sample());
  await tablet.settle();
  expect(same.record()).toMatchObject({ waiting: 0, conflicts: [], revision: 1 });
  const other = await fakeDevice(shop, "third").shelf.add(sample("Another title"));
  const third = fakeDevice(shop, "fourth");
  const differing = await third.shelf.add(other.record().document);
  await third.settle();
  expect(differing.record().conflicts.map(({ path }) => path)).toEqual(["title"]);
});

test("an example that somebody else has worked on is taken as it is there: who opens it has changed nothing", async () => {
  const { shop, phone, here } = await shared();
  here.edit(titled("Worked on"));
  await phone.settle();
  const third = fakeDevice(shop, "third");
  const example = await third.shelf.add(sample(), { revision: null });
  await third.settle();
  expect(example.record()).toMatchObject({ document: { title: "Worked on" }, conflicts: [], waiting: 0 });
});

test("two windows of one device keep one case, and what was written in one is not lost by the other", async () => {
  const shop = fakeShop();
  shop.cut = true;
  const openStore = memoryWindows();
  const [left, right] = [fakeDevice(shop, "left", openStore()), fakeDevice(shop, "right", openStore())];
  const here = await left.shelf.add(sample());
  const there = (await right.shelf.open("case-1")) as OpenCase;
  here.edit(titled("Left"));
  await left.settle();
  await right.settle();
  expect(there.record().document.title).toBe("Left");
  there.edit(labelled("Right"));
  await right.settle();
  await left.settle();
  expect(here.record().document).toMatchObject({ title: "Left", vehicle: { label: "Right" } });
  here.undo();
  here.undo();
  await here.kept();
  const later = (await fakeDevice(shop, "later", openStore()).shelf.open("case-1")) as OpenCase;
  expect(later.record().document).toMatchObject({ title: "Rumble" });
  expect(later.record().document.vehicle).toEqual({});
});

test("a device that was not let in keeps its changes and says so; let in, it sends them", async () => {
  const { shop, phone, here } = await shared();
  shop.paired = false;
  here.edit(titled("At the gate"));
  await phone.settle();
  expect(phone.sync.status()).toEqual({ connection: "not-paired", waiting: 1 });
  expect(here.record().refused).toBeNull();
  shop.paired = true;
  await phone.sync.catchUp();
  expect(phone.sync.status()).toEqual({ connection: "reached", waiting: 0 });
  expect(held(shop)?.document.title).toBe("At the gate");
});

test("a server that lost the case is given it again", async () => {
  const { shop, phone, here } = await shared();
  shop.kept.clear();
  here.edit(titled("Again"));
  await phone.settle();
  expect(held(shop)).toMatchObject({ document: { title: "Again" }, revision: 1 });
});
