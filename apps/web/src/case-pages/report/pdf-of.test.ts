import type { Case } from "@halfturn/casefile";
import { expect, test } from "vitest";
import { pdfOf } from "./pdf-of.js";

const document: Case = { format: "halfturn-case", version: 1, id: "a b", title: "T", createdAt: "2026-01-01T00:00:00Z", drivelines: [] };
const request = { language: "es", units: "us", paper: "letter" } as const;
const pdf = () => new Response("%PDF-1.7", { headers: { "content-type": "application/pdf" } });
const server = (report: () => Response, there: unknown = document) => {
  const asked: string[] = [];
  const ask = (async (place: string) => {
    asked.push(place);
    return place.includes("report.pdf") ? report() : Response.json(there);
  }) as unknown as typeof fetch;
  return { asked, ask };
};

test("the PDF is asked for in the language and units and on the paper that were chosen", async () => {
  const { asked, ask } = server(pdf);
  const answer = await pdfOf(document, request, ask);
  expect(asked[0]).toBe("/api/cases/a%20b/report.pdf?language=es&units=us&paper=letter");
  expect(answer).toMatchObject({ is: "made", older: false });
  expect(answer.is === "made" && (await answer.pdf.text())).toBe("%PDF-1.7");
});

test("a server with an older state of the case is told apart, one with other order of keys is not", async () => {
  expect(await pdfOf(document, request, server(pdf, { ...document, title: "Old" }).ask)).toMatchObject({ older: true });
  const { id, ...rest } = document;
  expect(await pdfOf(document, request, server(pdf, { ...rest, id }).ask)).toMatchObject({ older: false });
});

test("no server, no case, no PDF: each is its own answer", async () => {
  const offline = (async () => {
    throw new TypeError("network");
  }) as unknown as typeof fetch;
  expect(await pdfOf(document, request, offline)).toEqual({ is: "offline" });
  expect(await pdfOf(document, request, server(() => new Response("", { status: 404 })).ask)).toEqual({ is: "unknown" });
  expect(await pdfOf(document, request, server(() => new Response("", { status: 503 })).ask)).toEqual({ is: "refused" });
  const page = () => new Response("<!doctype html>", { headers: { "content-type": "text/html" } });
  expect(await pdfOf(document, request, server(page).ask)).toEqual({ is: "refused" });
});
