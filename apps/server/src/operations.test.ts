import * as exchange from "@halfturn/exchange";
import fc from "fast-check";
import { afterAll, beforeAll, expect, test } from "vitest";
import { z } from "zod";
import { demoCases } from "./demo/demo-cases.js";
import { mutated, type OpenApiDocument, type Operation, operationsOf, requestFor } from "./operations.test-support.js";
import { PICTURES } from "./pictures/sample-pictures.test-support.js";
import { openShop, type Shop, sampleCase } from "./shop.test-support.js";

const SEED = 20_260_501;
const RUNS_EACH = 60;
/** Above what a request may take here, with a report among them. */
const TIME_LIMIT_MS = 120_000;

let shop: Shop;
let operations: readonly Operation[];
beforeAll(async () => {
  // Reports and codes have their own tests; here reports would only take time, and no code would ever be guessed.
  shop = await openShop((parts) => ({
    ...parts,
    reports: { render: async () => ({ ok: false, why: "nothing" }), close: () => undefined },
    lan: {
      addresses: ["https://192.0.2.7:4681"],
      certificate: "PEM",
      pairing: { begin: () => ({ code: CODE, expiresAt: 0 }), claim: (code) => (code === CODE ? "granted" : "refused") },
    },
  }));
  operations = operationsOf((await (await shop.ask("/api/openapi.json")).json()) as OpenApiDocument);
  for (const document of demoCases) await shop.take(document);
  await shop.take(sampleCase("plain"));
  for (const id of KNOWN.id) await shop.store.devices.add({ id, name: id, tokenHash: id }, shop.parts.now());
  for (const id of KNOWN.id)
    for (const name of KNOWN.name) await shop.ask(`/api/cases/${id}/attachments/${name}`, { method: "PUT", body: PNG });
});
afterAll(() => shop.remove());

const PNG = PICTURES.png;
const CODE = "12345678";
const KNOWN = {
  id: ["plain", ...demoCases.slice(0, 4).map(({ id }) => id)],
  revision: ["1", "2", "3"],
  name: ["a.png", "b.png"],
  "if-match": ['"1"', '"2"', '"3"', '"4"', '"5"'],
  "last-event-id": ["0", "3", "99"],
  "x-halfturn-device": ["Bay%201", "Office"],
};
const bodies = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(sampleCase("plain"), ...demoCases).chain(mutated) },
  { weight: 2, arbitrary: fc.constantFrom("plain", "new-1", "new-2").map((id) => JSON.stringify(sampleCase(id, { notes: id }))) },
  { weight: 2, arbitrary: fc.constant(PNG) },
  { weight: 1, arbitrary: fc.constantFrom(CODE, "1", "").map((code) => JSON.stringify({ code, device: "Phone" })) },
  { weight: 1, arbitrary: fc.json() },
  { weight: 1, arbitrary: fc.uint8Array({ maxLength: 60 }).map((bytes) => Uint8Array.from(bytes)) },
  { weight: 1, arbitrary: fc.uint8Array({ maxLength: 20 }).map((bytes) => Uint8Array.from([...PNG, ...bytes])) },
);

test("the document describes every operation that the server has", () => {
  const served = shop.app.routes.filter(({ path, method }) => path.startsWith("/api/") && method !== "ALL" && path !== "/api/openapi.json");
  const spelled = new Set(served.map(({ method, path }) => `${method} ${path.replaceAll(/:([a-z]+)/g, "{$1}")}`));
  expect(new Set(operations.map(({ method, path }) => `${method} ${path}`))).toEqual(spelled);
  expect(operations.length).toBeGreaterThan(15);
});

test("whatever is sent to an operation, it answers with a status that the document names, and never fails", {
  timeout: TIME_LIMIT_MS,
}, async () => {
  const seen = new Map<string, Set<number>>();
  for (const operation of operations) {
    const statuses = new Set<number>();
    seen.set(`${operation.method} ${operation.path}`, statuses);
    await fc.assert(
      fc.asyncProperty(requestFor(operation, KNOWN, bodies), async ({ path, headers, body }) => {
        const gone = new AbortController();
        const init = { method: operation.method, headers, ...(body === null ? {} : { body }), signal: gone.signal };
        const answer = await shop.app.request(path, init);
        gone.abort();
        await answer.body?.cancel();
        statuses.add(answer.status);
        // A path value of dots or nothing leads to another address, which has an answer of its own.
        const elsewhere = new URL(path, "http://localhost").pathname.split("/").length !== operation.path.split("/").length;
        if (elsewhere) expect(answer.status).toBeLessThan(500);
        else expect(operation.statuses, `${operation.method} ${path}`).toContain(answer.status);
        if (answer.status >= 400 && answer.status !== 412) expect(answer.headers.get("content-type")).toBe("application/problem+json");
      }),
      { seed: SEED, numRuns: RUNS_EACH },
    );
  }
  for (const [operation, statuses] of seen) expect(Math.min(...statuses), operation).toBeLessThan(operation.includes("report") ? 410 : 300);
});

test("and after all that the store finds nothing wrong with itself", async () => {
  expect(await shop.store.check()).toEqual([]);
});

test("every shape that server and app share has its name in the document, whichever was loaded first", async () => {
  const { components } = (await (await shop.ask("/api/openapi.json")).json()) as { readonly components: { readonly schemas: object } };
  const shared = Object.values(exchange).flatMap((one) => (one instanceof z.ZodType ? [one.meta()?.id] : []));
  expect(shared.length).toBeGreaterThan(10);
  for (const name of new Set(shared.filter((id) => id !== undefined))) expect(Object.keys(components.schemas)).toContain(name);
});
