import { createHash } from "node:crypto";
import type { Case } from "@halfturn/casefile";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { CaseStore, ListQuery, NewPicture } from "./case-store.js";
import { at, PNG, sampleCase } from "./sample-cases.test-support.js";

const ALL: ListQuery = { words: "", limit: 200, after: null, putAway: false };

/** What every store does, whatever database it lies in. */
export function storeContract(engine: string, open: () => Promise<CaseStore>): void {
  let store: CaseStore;
  beforeAll(async () => {
    store = await open();
  }, 60_000);
  afterAll(() => store.close());

  const find = async (words: string, more: Partial<ListQuery> = {}): Promise<readonly string[]> =>
    (await store.list({ ...ALL, words, ...more })).cases.map(({ id }) => id);

  describe(`cases in ${engine}`, () => {
    test("a case comes back as it was, key by key", async () => {
      const document = sampleCase("as-it-was", {
        notes: "Ruido a 110 km/h, añadir cuña; \u0000 \u{1F527} \u2028 \ud800",
        "x-shop": { "x-order": [1, 2.5, 1e-300, -0, 0.1], "": null, __proto__x: true },
      } as Partial<Case>);
      expect(await store.create(document, at(0))).toEqual({
        ok: true,
        revision: { revision: 1, savedAt: at(0).savedAt, savedBy: "Bay 1", kind: "saved" },
      });
      const read = await store.read("as-it-was");
      expect(read.is).toBe("held");
      if (read.is === "held") expect(JSON.stringify(read.held.document)).toBe(JSON.stringify(document));
    });

    test("an id is taken once; the same document sent twice is one case", async () => {
      const document = sampleCase("taken-once");
      await store.create(document, at(0));
      expect((await store.create(document, at(1))).ok).toBe(true);
      expect(await store.create({ ...document, title: "Another" }, at(2))).toEqual({ ok: false, why: "exists" });
      expect((await store.history("taken-once"))?.revisions).toHaveLength(1);
    });

    test("many are taken up together, or none", async () => {
      await store.createAll([sampleCase("many-1"), sampleCase("many-2")], at(0));
      expect([...(await find("many"))].sort()).toEqual(["many-1", "many-2"]);
      await expect(store.createAll([sampleCase("many-3"), sampleCase("many-1")], at(0))).rejects.toMatchObject({ name: "StoreFault" });
      expect((await store.read("many-3")).is).toBe("unknown");
    });

    test("ids that differ by capitals are different cases", async () => {
      await store.create(sampleCase("capital"), at(0));
      expect((await store.create(sampleCase("Capital"), at(0))).ok).toBe(true);
      expect(await store.read("CAPITAL")).toEqual({ is: "unknown" });
    });

    test("a save that comes second is set aside, whole, and the first stays", async () => {
      const document = sampleCase("two-devices");
      await store.create(document, at(0));
      const first = await store.save({ ...document, notes: "from the bay" }, 1, at(1, "Bay 1"));
      const second = await store.save({ ...document, notes: "from the office" }, 1, at(2, "Office"));
      expect(first).toMatchObject({ ok: true, revision: { revision: 2 } });
      expect(second).toMatchObject({
        ok: false,
        why: "conflict",
        current: { revision: 2, savedBy: "Bay 1", document: { notes: "from the bay" } },
        setAside: { revision: 3, kind: "set-aside", savedBy: "Office" },
      });
      expect((await store.revision("two-devices", 3))?.document.notes).toBe("from the office");
      expect(await store.read("two-devices")).toMatchObject({ is: "held", held: { revision: 2 } });
      // What was set aside took a number; the next save takes the one after it.
      expect(await store.save({ ...document, notes: "both" }, 2, at(3))).toMatchObject({ ok: true, revision: { revision: 4 } });
      expect((await store.history("two-devices"))?.revisions.map(({ kind }) => kind)).toEqual(["saved", "saved", "set-aside", "saved"]);
    });

    test("a save whose answer got lost is sent again without a conflict", async () => {
      const document = sampleCase("sent-again");
      await store.create(document, at(0));
      const changed = { ...document, notes: "once" };
      await store.save(changed, 1, at(1));
      expect(await store.save(changed, 1, at(2))).toMatchObject({ ok: true, revision: { revision: 2, savedAt: at(1).savedAt } });
    });

    test("of fifty saves at once over one revision, one counts and none is lost", async () => {
      const document = sampleCase("all-at-once");
      await store.create(document, at(0));
      const saves = Array.from({ length: 50 }, (_, k) => store.save({ ...document, notes: `device ${k}` }, 1, at(k, `Device ${k}`)));
      const saved = await Promise.all(saves);
      expect(saved.filter(({ ok }) => ok)).toHaveLength(1);
      const history = (await store.history("all-at-once"))?.revisions ?? [];
      const kept = await Promise.all(history.map(({ revision }) => store.revision("all-at-once", revision)));
      expect(new Set(kept.map((one) => one?.document.notes)).size).toBe(51);
      expect(history.map(({ revision }) => revision)).toEqual(Array.from({ length: 51 }, (_, k) => k + 1));
    });

    test("a case put away is out of the list, keeps what is saved late, and comes back", async () => {
      const document = sampleCase("away-and-back");
      await store.create(document, at(0));
      expect(await store.putAway("away-and-back", 7, at(1))).toMatchObject({ ok: false, why: "conflict", current: { revision: 1 } });
      expect(await store.putAway("away-and-back", 1, at(1))).toMatchObject({ ok: true, revision: { revision: 2, kind: "removed" } });
      expect(await store.putAway("away-and-back", 2, at(1))).toEqual({ ok: false, why: "put-away", revision: 2 });
      expect(await find("away-and-back")).toEqual([]);
      expect(await find("away-and-back", { putAway: true })).toEqual(["away-and-back"]);
      expect(await store.read("away-and-back")).toEqual({ is: "put-away", revision: 2 });
      expect(await store.create(document, at(2))).toEqual({ ok: false, why: "put-away", revision: 2 });
      const late = await store.save({ ...document, notes: "late" }, 1, at(3));
      expect(late).toMatchObject({ ok: false, why: "put-away", setAside: { revision: 3 } });
      expect((await store.revision("away-and-back", 3))?.document.notes).toBe("late");
      expect(await store.bringBack("away-and-back", at(4))).toMatchObject({ ok: true, revision: { revision: 4, kind: "saved" } });
      expect(await store.bringBack("away-and-back", at(5))).toEqual({ ok: false, why: "not-put-away" });
      const read = await store.read("away-and-back");
      expect(read.is === "held" && JSON.stringify(read.held.document)).toBe(JSON.stringify(document));
    });

    test("what never was is unknown", async () => {
      expect(await store.read("never")).toEqual({ is: "unknown" });
      expect(await store.history("never")).toBeNull();
      expect(await store.revision("never", 1)).toBeNull();
      expect(await store.save(sampleCase("never"), 1, at(0))).toEqual({ ok: false, why: "unknown" });
      expect(await store.putAway("never", 1, at(0))).toEqual({ ok: false, why: "unknown" });
      expect(await store.bringBack("never", at(0))).toEqual({ ok: false, why: "unknown" });
      expect(await store.attachments("never")).toBeNull();
    });
  });

  describe(`lists and search in ${engine}`, () => {
    test("newest change first, page by page, without a gap", async () => {
      for (let k = 0; k < 7; k++) await store.create(sampleCase(`paged-${k}`), at(k));
      await store.save(sampleCase("paged-2", { notes: "touched" }), 1, at(9));
      const ids: string[] = [];
      let after: string | null = null;
      do {
        const page = await store.list({ words: "paged", limit: 3, after, putAway: false });
        expect(page.cases.length).toBeLessThanOrEqual(3);
        ids.push(...page.cases.map(({ id }) => id));
        after = page.next;
      } while (after !== null);
      expect(ids).toEqual(["paged-2", "paged-6", "paged-5", "paged-4", "paged-3", "paged-1", "paged-0"]);
    });

    test.each([
      ["the beginning of a word of the title", "grit"],
      ["a word of the vehicle", "harbour"],
      ["a word of the notes, without its accent", "cuna"],
      ["capitals and accents where there are none", "GRÍTTER"],
      ["several words in any order", "110 gritter"],
      ["a word with a sign", "U-bolts!"],
      ["its id", "search-target"],
    ])("finds a case by %s", async (_, words) => {
      await store.create(
        sampleCase("search-target", {
          title: "Gritter 12: shudder at 110",
          vehicle: { label: "Harbour works, heavy truck" },
          complaint: { notes: "Montar una cuña" },
          notes: "New U-bolts",
        }),
        at(0),
      );
      expect(await find(words)).toContain("search-target");
    });

    test.each([
      "ritter",
      "gritter 111",
      "'",
      '"',
      "*",
      "gritter* or",
      "' | 'zz",
      "\\",
      "gritter\u0000x",
      "--",
      "%",
      "a:zz & !qq",
      "NEAR(grit",
    ])("%j finds nothing, and breaks nothing", async (words) => {
      expect(await find(words)).not.toContain("search-target");
    });

    test("words of an earlier revision no longer find the case", async () => {
      await store.create(sampleCase("renamed", { title: "Zebrawood" }), at(0));
      await store.save(sampleCase("renamed", { title: "Mahogany" }), 1, at(1));
      expect(await find("zebrawood")).toEqual([]);
      expect(await find("mahogany")).toEqual(["renamed"]);
    });

    test("a page mark that is none begins at the beginning", async () => {
      expect(await find("renamed", { after: "1; drop table cases" })).toEqual(["renamed"]);
    });

    test("shows how far a case has come", async () => {
      const { cases } = await store.list({ ...ALL, words: "renamed" });
      expect(cases[0]).toEqual({
        id: "renamed",
        title: "Mahogany",
        vehicle: null,
        revision: 2,
        savedAt: at(1).savedAt,
        savedBy: "Bay 1",
        progress: { gauged: false, corrected: false, proved: false },
      });
    });
  });

  describe(`changes in ${engine}`, () => {
    test("are told once each, in the order in which they were made; what was set aside is not told", async () => {
      const before = await store.latest();
      const document = sampleCase("told");
      await store.create(document, at(0));
      await store.save({ ...document, notes: "a" }, 1, at(1));
      await store.save({ ...document, notes: "b" }, 1, at(2));
      await store.putAway("told", 2, at(3, "Office"));
      const changes = await store.changesAfter(before, 100);
      expect(changes.map(({ event }) => event)).toEqual([
        { id: "told", revision: 1, savedBy: "Bay 1", kind: "saved" },
        { id: "told", revision: 2, savedBy: "Bay 1", kind: "saved" },
        { id: "told", revision: 4, savedBy: "Office", kind: "removed" },
      ]);
      const numbers = changes.map(({ sequence }) => sequence);
      expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
      expect(await store.changesAfter(numbers[0] as number, 1)).toEqual([changes[1]]);
      expect(await store.changesAfter(await store.latest(), 100)).toEqual([]);
    });
  });

  describe(`pictures in ${engine}`, () => {
    const picture = (name: string, extra: number): NewPicture => {
      const content = Uint8Array.from([...PNG, extra]);
      return { name, hash: createHash("sha256").update(content).digest("hex"), type: "image/png", content };
    };

    test("come back byte for byte, by name and by hash", async () => {
      await store.create(sampleCase("pictured"), at(0));
      const flange = picture("flange.png", 1);
      expect(await store.attach("pictured", flange, at(1))).toMatchObject({ ok: true, isNew: true });
      expect(await store.attach("pictured", flange, at(2))).toMatchObject({ ok: true, isNew: false });
      for (const key of ["flange.png", flange.hash]) {
        const found = await store.picture("pictured", key);
        expect(found && [...found.content]).toEqual([...flange.content]);
        expect(found?.attachment).toEqual({
          name: "flange.png",
          hash: flange.hash,
          type: "image/png",
          bytes: flange.content.byteLength,
          savedAt: at(1).savedAt,
          savedBy: "Bay 1",
        });
      }
    });

    test("a name stands for one picture", async () => {
      expect(await store.attach("pictured", picture("flange.png", 2), at(2))).toEqual({ ok: false, why: "taken" });
    });

    test("one picture in two cases stays until the last lets it go", async () => {
      await store.create(sampleCase("pictured-too"), at(0));
      const shared = picture("shared.png", 3);
      await store.attach("pictured", shared, at(1));
      await store.attach("pictured-too", shared, at(1));
      expect(await store.detach("pictured", "shared.png")).toBe(true);
      expect(await store.detach("pictured", "shared.png")).toBe(false);
      expect(await store.picture("pictured", "shared.png")).toBeNull();
      expect(await store.picture("pictured-too", shared.hash)).not.toBeNull();
      expect(await store.detach("pictured-too", shared.hash)).toBe(true);
      expect(await store.attachments("pictured-too")).toEqual([]);
    });

    test("belong to cases that are there", async () => {
      expect(await store.attach("nobody", picture("a.png", 4), at(0))).toEqual({ ok: false, why: "unknown" });
      await store.create(sampleCase("pictured-away"), at(0));
      await store.putAway("pictured-away", 1, at(1));
      expect(await store.attach("pictured-away", picture("a.png", 4), at(2))).toEqual({ ok: false, why: "put-away", revision: 2 });
    });
  });

  describe(`devices in ${engine}`, () => {
    test("are known by their token until they are sent away, and noted as seen once a minute", async () => {
      await store.devices.add({ id: "phone", name: "Bay 1 phone", tokenHash: "a".repeat(64) }, at(0).savedAt);
      await store.devices.add({ id: "tablet", name: "Tablet", tokenHash: "b".repeat(64) }, at(1).savedAt);
      expect(await store.devices.byToken("a".repeat(64), at(30).savedAt)).toMatchObject({ name: "Bay 1 phone", lastSeenAt: at(0).savedAt });
      expect(await store.devices.byToken("a".repeat(64), at(90).savedAt)).toMatchObject({ lastSeenAt: at(90).savedAt });
      expect((await store.devices.list()).map(({ id }) => id)).toEqual(["phone", "tablet"]);
      expect(await store.devices.byToken("c".repeat(64), at(90).savedAt)).toBeNull();
      expect(await store.devices.sendAway("phone")).toBe(true);
      expect(await store.devices.sendAway("phone")).toBe(false);
      expect(await store.devices.byToken("a".repeat(64), at(91).savedAt)).toBeNull();
    });
  });

  test(`after all this ${engine} finds nothing wrong with itself`, async () => {
    expect(await store.check()).toEqual([]);
  });
}
