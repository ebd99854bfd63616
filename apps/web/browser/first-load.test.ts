import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { launch, openDevice } from "./support/device.js";
import { openShop, type Shop, WEB } from "./support/shop.js";

let shop: Shop;
let browser: Browser;

beforeAll(async () => {
  [shop, browser] = await Promise.all([openShop(), launch()]);
});
afterAll(async () => {
  await browser?.close();
  await shop?.remove();
});

/** What a phone on a bad network has to fetch before it shows the list of cases. */
const BUDGET_BYTES = 220_000;

test("the list of cases needs at most 220 kB of compressed script", async () => {
  const { page, context } = await openDevice(browser, shop.address);
  // The copy for offline use comes afterwards, and holds nobody up.
  await context.route("**/sw.js", (route) => route.abort());
  const scripts = new Set<string>();
  page.on("request", (request) => {
    if (request.url().endsWith(".js")) scripts.add(new URL(request.url()).pathname);
  });
  await page.goto("/cases");
  await page.getByText("No cases yet").waitFor();
  const sizes = [...scripts].filter((path) => path !== "/sw.js").map((path) => gzipSync(readFileSync(join(WEB, path))).length);
  expect(sizes.length).toBeGreaterThan(2);
  expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(BUDGET_BYTES);
});
