import { createHash } from "node:crypto";
import type { Attachment, Refusals } from "@halfturn/exchange";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { PICTURES, withTail } from "./pictures/sample-pictures.test-support.js";
import { openShop, type Shop, sampleCase } from "./shop.test-support.js";

let shop: Shop;
beforeAll(async () => {
  shop = await openShop();
  await shop.take(sampleCase("pictured"));
});
afterAll(() => shop.remove());

const bytes = (text: string): Uint8Array<ArrayBuffer> => Uint8Array.from(text, (character) => character.charCodeAt(0));
const { png: PNG, jpeg: JPEG, webp: WEBP } = PICTURES;
const hashOf = (content: Uint8Array): string => createHash("sha256").update(content).digest("hex");

const put = (name: string, body: Uint8Array<ArrayBuffer>, id = "pictured"): Promise<Response> =>
  shop.ask(`/api/cases/${id}/attachments/${name}`, { method: "PUT", body });

describe("pictures of a case", () => {
  test.each([
    ["flange.png", PNG, "image/png"],
    ["flange.jpg", JPEG, "image/jpeg"],
    ["flange.webp", WEBP, "image/webp"],
    ["named-like-text.txt", PNG, "image/png"],
  ])("%s is what its bytes say", async (name, content, type) => {
    const kept = await put(name, content);
    expect(kept.status).toBe(201);
    expect((await kept.json()) as Attachment).toMatchObject({ name, type, hash: hashOf(content), bytes: content.byteLength });
    const read = await shop.ask(`/api/cases/pictured/attachments/${name}`);
    expect([read.headers.get("content-type"), read.headers.get("x-content-type-options")]).toEqual([type, "nosniff"]);
    expect(new Uint8Array(await read.arrayBuffer())).toEqual(content);
    expect(
      (await shop.ask(`/api/cases/pictured/attachments/${name}`, { headers: { "if-none-match": `"${hashOf(content)}"` } })).status,
    ).toBe(304);
  });

  test("by its hash a picture may be kept for ever", async () => {
    const read = await shop.ask(`/api/cases/pictured/attachments/${hashOf(PNG)}`);
    expect(read.headers.get("cache-control")).toContain("immutable");
  });

  test("under a hash only the picture of that hash is taken", async () => {
    const other = withTail(PNG, "other");
    expect((await put(hashOf(other), PNG)).status).toBe(422);
    expect((await put(hashOf(other), other)).status).toBe(201);
    expect((await put(hashOf(other), other)).status).toBe(200);
  });

  test.each([
    ["a page", "<svg onload=alert(1)>", 415],
    ["a program", "MZ\x90\0", 415],
    ["half a signature", "\x89PNG", 415],
    ["the beginning of one", "\x89PNG\r\n\x1a\nflange", 422],
    ["nothing", "", 400],
  ])("%s is no picture", async (_, content, status) => {
    expect((await put("x.png", bytes(content))).status).toBe(status);
  });

  test.each(["..", "%2e%2e%2fsecret.txt", "a%2Fb.png", ".hidden", "a b.png", "x".repeat(81), "%00.png"])("%s is no name", async (name) => {
    const answer = await put(name, PNG);
    expect([404, 405, 422]).toContain(answer.status);
  });

  test("one of more pixels than a screen can hold is refused with both numbers", async () => {
    const huge = Uint8Array.from(PNG);
    new DataView(huge.buffer).setUint32(16, 11_000_000);
    const answer = await put("huge.png", huge);
    expect([answer.status, await answer.json()]).toEqual([
      422,
      expect.objectContaining({ code: "picture-too-large", params: { pixels: 66_000_000, limit: 64_000_000 } }),
    ]);
  });

  test("one over the limit is refused", async () => {
    const large = new Uint8Array(10_000_001);
    large.set(PNG);
    const answer = await put("large.png", large);
    expect([answer.status, ((await answer.json()) as Refusals).code]).toEqual([413, "body-too-large"]);
  });

  test("is taken away again", async () => {
    const path = "/api/cases/pictured/attachments/flange.jpg";
    expect((await shop.ask(path, { method: "DELETE" })).status).toBe(204);
    expect((await shop.ask(path)).status).toBe(404);
    expect((await shop.ask(path, { method: "DELETE" })).status).toBe(404);
  });
});
