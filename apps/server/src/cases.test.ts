import type { CaseHistory, CaseList, Refusals, SaveConflict } from "@halfturn/exchange";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openShop, type Shop, sampleCase } from "./shop.test-support.js";

let shop: Shop;
beforeAll(async () => {
  shop = await openShop();
});
afterAll(() => shop.remove());

const put = (id: string, document: unknown, headers: Record<string, string>): Promise<Response> =>
  shop.ask(`/api/cases/${id}`, { method: "PUT", headers, body: JSON.stringify(document) });
const refusalOf = async (response: Response): Promise<Refusals> => (await response.json()) as Refusals;

describe("a case over HTTP", () => {
  test("is taken up, read, and read again only when it changed", async () => {
    const document = sampleCase("first", { notes: "ñ 漢 \u{1F527}" });
    const made = await shop.ask("/api/cases", { method: "POST", body: JSON.stringify(document) });
    expect([made.status, made.headers.get("etag"), made.headers.get("location")]).toEqual([201, '"1"', "/api/cases/first"]);
    const read = await shop.ask("/api/cases/first");
    expect([read.status, read.headers.get("etag")]).toEqual([200, '"1"']);
    expect(await read.json()).toEqual(document);
    for (const tag of ['"1"', 'W/"1"']) {
      expect((await shop.ask("/api/cases/first", { headers: { "if-none-match": tag } })).status).toBe(304);
    }
    expect((await shop.ask("/api/cases/first", { headers: { "if-none-match": '"2"' } })).status).toBe(200);
  });

  test("is saved under its tag, by whoever says so", async () => {
    await shop.take(sampleCase("saved"));
    const device = { "x-halfturn-device": encodeURIComponent("Bahía 2 – José") };
    const saved = await put("saved", sampleCase("saved", { notes: "x" }), { "if-match": '"1"', ...device });
    expect([saved.status, saved.headers.get("etag")]).toEqual([200, '"2"']);
    const history = (await (await shop.ask("/api/cases/saved/history")).json()) as CaseHistory;
    expect(history.revisions.map(({ savedBy, kind }) => [savedBy, kind])).toEqual([
      ["-", "saved"],
      ["Bahía 2 – José", "saved"],
    ]);
    const before = await shop.ask("/api/cases/saved/history/1");
    expect(((await before.json()) as { notes?: string }).notes).toBeUndefined();
  });

  test("is never saved blindly", async () => {
    await shop.take(sampleCase("blind"));
    expect((await put("blind", sampleCase("blind"), {})).status).toBe(428);
    for (const tag of ["*", "1", '"0"', '"x"', '"1", "2"', ""]) {
      expect([400, 428], tag).toContain((await put("blind", sampleCase("blind", { notes: tag }), { "if-match": tag })).status);
    }
    expect(((await (await shop.ask("/api/cases/blind/history")).json()) as CaseHistory).revisions).toHaveLength(1);
  });

  test("a save that comes second gets what is held, and is kept", async () => {
    await shop.take(sampleCase("conflict"));
    await put("conflict", sampleCase("conflict", { notes: "first" }), { "if-match": '"1"' });
    const second = await put("conflict", sampleCase("conflict", { notes: "second" }), { "if-match": '"1"', "x-halfturn-device": "Office" });
    expect([second.status, second.headers.get("etag")]).toEqual([412, '"2"']);
    const { current, setAside } = (await second.json()) as SaveConflict;
    expect([current.revision, current.document.notes]).toEqual([2, "first"]);
    expect(setAside).toMatchObject({ revision: 3, kind: "set-aside", savedBy: "Office" });
    const kept = await shop.ask(`/api/cases/conflict/history/${setAside.revision}`);
    expect(((await kept.json()) as { notes: string }).notes).toBe("second");
  });

  test("is put away and brought back", async () => {
    await shop.take(sampleCase("away"));
    expect((await shop.ask("/api/cases/away", { method: "DELETE" })).status).toBe(428);
    expect((await shop.ask("/api/cases/away", { method: "DELETE", headers: { "if-match": '"9"' } })).status).toBe(412);
    expect((await shop.ask("/api/cases/away", { method: "DELETE", headers: { "if-match": '"1"' } })).status).toBe(200);
    expect((await shop.ask("/api/cases/away")).status).toBe(410);
    const late = await put("away", sampleCase("away", { notes: "late" }), { "if-match": '"1"' });
    expect([late.status, (await refusalOf(late)).params]).toEqual([410, { id: "away", revision: 2, setAside: 3 }]);
    const away = (await (await shop.ask("/api/cases?put-away=true&q=away")).json()) as CaseList;
    expect(away.cases.map(({ id }) => id)).toEqual(["away"]);
    const back = await shop.ask("/api/cases/away/bring-back", { method: "POST" });
    expect([back.status, back.headers.get("etag")]).toEqual([200, '"4"']);
    expect((await shop.ask("/api/cases/away/bring-back", { method: "POST" })).status).toBe(409);
  });

  test("is found, page by page", async () => {
    for (const k of [1, 2, 3]) await shop.take(sampleCase(`page-${k}`, { vehicle: { label: "Skerry Ferries, vehículo" } }));
    const first = (await (await shop.ask("/api/cases?q=FERRIES%20vehiculo&limit=2")).json()) as CaseList;
    expect(first.cases.map(({ id }) => id)).toEqual(["page-3", "page-2"]);
    const second = (await (await shop.ask(`/api/cases?q=ferries&limit=2&after=${first.next}`)).json()) as CaseList;
    expect([second.cases.map(({ id }) => id), second.next]).toEqual([["page-1"], null]);
  });

  test("goes out as a file and comes in again, as itself or as a copy", async () => {
    await shop.take(sampleCase("travels"));
    const out = await shop.ask("/api/cases/travels/export");
    expect(out.headers.get("content-disposition")).toBe('attachment; filename="travels.halfturn.json"');
    const text = await out.text();
    expect(text.endsWith("}\n")).toBe(true);
    const changed = JSON.stringify({ ...JSON.parse(text), title: "Another" });
    expect((await shop.ask("/api/import", { method: "POST", body: changed })).status).toBe(409);
    const copy = await shop.ask("/api/import?as=copy", { method: "POST", body: changed });
    expect([copy.status, copy.headers.get("location")]).toEqual([201, "/api/cases/copy-1"]);
    expect(((await (await shop.ask("/api/cases/copy-1")).json()) as { id: string }).id).toBe("copy-1");
  });
});

describe("refusals", () => {
  test("say everything that is wrong with a case, in the language asked for", async () => {
    const broken = { format: "halfturn-case", version: 1, id: "broken", titel: "x", createdAt: "yesterday", drivelines: [] };
    const answer = await shop.ask("/api/cases", {
      method: "POST",
      body: JSON.stringify(broken),
      headers: { "accept-language": "es-MX, en;q=0.5" },
    });
    expect([answer.status, answer.headers.get("content-type")]).toEqual([422, "application/problem+json"]);
    const { code, problems } = await refusalOf(answer);
    expect(code).toBe("case-refused");
    expect(problems?.map((problem) => problem.path)).toEqual(expect.arrayContaining(["titel", "createdAt", "drivelines"]));
    expect(problems?.find(({ path }) => path === "titel")?.message).toMatch(/quiso decir "title"/);
  });

  test.each([
    ["no JSON", "{", 422, "case-refused"],
    ["nothing", "", 400, "body-missing"],
    ["an id that is a path", JSON.stringify(sampleCase("..")), 422, "id-unusable"],
    ["an id with a slash", JSON.stringify(sampleCase("a/b")), 422, "id-unusable"],
  ])("%s is refused", async (_, body, status, code) => {
    const answer = await shop.ask("/api/cases", { method: "POST", body });
    expect([answer.status, (await refusalOf(answer)).code]).toEqual([status, code]);
  });

  test("a document for another address is refused", async () => {
    await shop.take(sampleCase("one"));
    const answer = await put("one", sampleCase("two"), { "if-match": '"1"' });
    expect([answer.status, (await refusalOf(answer)).code]).toEqual([422, "id-differs"]);
  });

  test.each([
    ["too long", "x".repeat(61)],
    ["no encoding", "%E0%A4%A"],
    ["a line break", "a%0Ab"],
  ])("the name of a device that is %s is refused", async (_, name) => {
    const answer = await shop.ask("/api/cases", {
      method: "POST",
      body: JSON.stringify(sampleCase("dev")),
      headers: { "x-halfturn-device": name },
    });
    expect([answer.status, (await refusalOf(answer)).code]).toEqual([400, "device-name-unreadable"]);
  });

  test("a body over the limit is read away and refused", async () => {
    const answer = await shop.ask("/api/cases", { method: "POST", body: "x".repeat(20_000_001) });
    expect([answer.status, (await refusalOf(answer)).code]).toEqual([413, "body-too-large"]);
  });

  test("what the database cannot do is said, and can be tried again", async () => {
    const broken = await openShop();
    await broken.store.close();
    const answer = await broken.ask("/api/cases");
    expect(answer.status).toBe(500);
    expect((await refusalOf(answer)).code).toBe("database-failed");
    expect(broken.logged.some(({ event }) => event === "database-fault")).toBe(true);
  });
});

test("changes leave a line in the log: who, what, how it went", () => {
  expect(shop.logged).toContainEqual(
    expect.objectContaining({ event: "request", method: "PUT", path: "/api/cases/conflict", status: 412, device: "Office" }),
  );
});
