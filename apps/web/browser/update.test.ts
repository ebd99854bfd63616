import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { installed, launch, openDevice } from "./support/device.js";
import { show } from "./support/pages.js";
import { openShop, type Shop, WEB } from "./support/shop.js";

let shop: Shop;
let browser: Browser;
let folder: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "halfturn-web-"));
  cpSync(WEB, folder, { recursive: true });
  [shop, browser] = await Promise.all([openShop({ web: folder }), launch()]);
});
afterAll(async () => {
  await browser?.close();
  await shop?.remove();
  rmSync(folder, { recursive: true, force: true });
});

/** As a newer build would differ for a browser: another page, and another service worker. */
function release(): void {
  for (const [name, mark] of [
    ["sw.js", "// newer"],
    ["index.html", "<!-- newer -->"],
  ] as const) {
    writeFileSync(join(folder, name), `${readFileSync(join(folder, name), "utf8")}\n${mark}\n`);
  }
}

test("a newer version is told of and waits: it never opens the page anew under somebody's hands", async () => {
  const { page } = await openDevice(browser, shop.address);
  await show(page, "/cases/new");
  await installed(page);
  await page.reload();
  await page.evaluate(() => Object.assign(window, { untouched: true }));
  release();
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await page.getByText("A newer version is ready.").waitFor();
  await page.waitForTimeout(500);
  expect(await page.evaluate(() => "untouched" in window)).toBe(true);
  await Promise.all([page.waitForEvent("load"), page.getByRole("button", { name: "Start it" }).click()]);
  expect(await page.evaluate(() => "untouched" in window)).toBe(false);
});
