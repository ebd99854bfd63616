import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import { openDevice } from "./support/device.js";
import { WEB } from "./support/shop.js";
import { shopAndBrowser } from "./support/shop-and-browser.js";

const at = shopAndBrowser();

/** What a phone on a bad network has to fetch before it shows the list of cases. */
const BUDGET_BYTES = 220_000;

test("the list of cases needs at most 220 kB of compressed script", async () => {
  const { page, context } = await openDevice(at.browser, at.shop.address);
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
