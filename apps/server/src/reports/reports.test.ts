import { Buffer } from "node:buffer";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Case } from "@halfturn/casefile";
import type { Refusals } from "@halfturn/exchange";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { demoCases } from "../demo/demo-cases.js";
import { openShop, type Shop, sampleCase } from "../shop.test-support.js";
import type { ReportJob } from "./render-report.js";
import { reportRenderer, type WorkerAnswer } from "./report-renderer.js";

let shop: Shop;
const gauged = demoCases.find(({ gauging }) => (gauging ?? []).length > 0) as Case;
beforeAll(async () => {
  shop = await openShop();
  await shop.take(gauged);
  await shop.take(sampleCase("bare"));
});
afterAll(() => shop.remove());

describe("a report over HTTP", () => {
  test("is a PDF in the language and on the paper asked for", async () => {
    const answer = await shop.ask(`/api/cases/${gauged.id}/report.pdf?language=es&paper=letter`);
    expect([answer.status, answer.headers.get("content-type")]).toEqual([200, "application/pdf"]);
    expect(answer.headers.get("content-disposition")).toBe(`inline; filename="${gauged.id}.pdf"`);
    const pdf = Buffer.from(await answer.arrayBuffer()).toString("latin1");
    expect(pdf.startsWith("%PDF-1.7")).toBe(true);
    expect(pdf).toContain("/Lang (es)");
  });

  test("is a page that may load nothing, in the language of the browser", async () => {
    const answer = await shop.ask(`/api/cases/${gauged.id}/report.html`, { headers: { "accept-language": "es" } });
    expect(answer.headers.get("content-security-policy")).toContain("default-src 'none'");
    expect(await answer.text()).toContain('<html lang="es">');
  });

  test("is in metric units unless US ones are asked for", async () => {
    const page = async (query: string): Promise<string> => (await shop.ask(`/api/cases/${gauged.id}/report.html${query}`)).text();
    const [plain, metric, us] = [await page("?language=en"), await page("?language=en&units=metric"), await page("?language=en&units=us")];
    expect(plain).toContain("km/h");
    expect(metric).toBe(plain);
    expect(us).toContain("mph");
    expect(us).not.toContain("km/h");
  });

  test("of a case without a gauging is refused, and so is a language nobody wrote", async () => {
    const bare = await shop.ask("/api/cases/bare/report.pdf");
    expect([bare.status, ((await bare.json()) as Refusals).code]).toEqual([409, "nothing-to-report"]);
    expect((await shop.ask("/api/cases/bare/report.pdf?language=xx")).status).toBe(400);
    expect((await shop.ask("/api/cases/bare/report.pdf?units=roman")).status).toBe(400);
    expect((await shop.ask("/api/cases/never/report.html")).status).toBe(404);
  });
});

describe("the process that makes reports", () => {
  const job = (kind: ReportJob["kind"]): ReportJob => ({
    document: gauged,
    kind,
    language: "en",
    paper: "a4",
    units: "metric",
    date: "2026-05-01",
    version: "0.0.0",
  });
  const worker = (name: string, source: string): URL => {
    const file = join(shop.folder, `${name}.mjs`);
    writeFileSync(file, source);
    return pathToFileURL(file);
  };
  const ANSWERS =
    "process.on('message', ({ kind }) => process.send({ ok: true, bytes: new Uint8Array([process.pid % 256, kind.length]) }));";

  test("is replaced after so many reports", async () => {
    const renderer = reportRenderer({
      worker: worker("counts", ANSWERS.replace("process.pid % 256", "globalThis.n = (globalThis.n ?? 0) + 1")),
      reportsEach: 2,
    });
    const made: WorkerAnswer[] = [];
    for (let k = 0; k < 5; k++) made.push(await renderer.render(job("pdf")));
    expect(made.map((answer) => answer.ok && answer.bytes[0])).toEqual([1, 2, 1, 2, 1]);
    renderer.close();
  });

  test("makes one report at a time, however many ask", async () => {
    const renderer = reportRenderer({ worker: worker("many", ANSWERS) });
    const answers = await Promise.all(Array.from({ length: 10 }, () => renderer.render(job("html"))));
    expect(answers.every(({ ok }) => ok)).toBe(true);
    renderer.close();
  });

  test("may die: that report fails, and the next is made", async () => {
    const dies =
      "process.on('message', ({ kind }) => (kind === 'pdf' ? process.exit(3) : process.send({ ok: true, bytes: new Uint8Array([1]) })));";
    const renderer = reportRenderer({ worker: worker("dies", dies) });
    expect(await renderer.render(job("pdf"))).toMatchObject({ ok: false, why: "failed" });
    expect(await renderer.render(job("html"))).toMatchObject({ ok: true });
    renderer.close();
  });

  test("may hang: it is ended, and the next report is made", async () => {
    const hangs =
      "process.on('message', ({ kind }) => { if (kind === 'pdf') for (;;); process.send({ ok: true, bytes: new Uint8Array([1]) }); });";
    const renderer = reportRenderer({ worker: worker("hangs", hangs), timeoutMs: 1500 });
    expect(await renderer.render(job("pdf"))).toMatchObject({ ok: false, why: "failed", error: expect.stringContaining("1500 ms") });
    expect(await renderer.render(job("html"))).toMatchObject({ ok: true });
    renderer.close();
  });

  test("a report that cannot be made is a fault of the server, in its log", async () => {
    const failing = await openShop((parts) => ({
      ...parts,
      reports: { render: async () => ({ ok: false, why: "failed", error: "no paper" }), close: () => undefined },
    }));
    await failing.take(gauged);
    expect((await failing.ask(`/api/cases/${gauged.id}/report.pdf`)).status).toBe(500);
    expect(failing.logged).toContainEqual({ event: "report-fault", case: gauged.id, error: "no paper" });
    await failing.remove();
  });
});
