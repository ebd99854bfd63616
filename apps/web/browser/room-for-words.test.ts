import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { clippedTexts, pseudoTranslate } from "./support/check-page.js";
import { launch, openDevice } from "./support/device.js";
import { pathsOf, show } from "./support/pages.js";
import { openShop, type Shop } from "./support/shop.js";

let shop: Shop;
let browser: Browser;
let id: string;

beforeAll(async () => {
  [shop, browser] = await Promise.all([openShop(), launch()]);
  ({ id } = await shop.add("corrected"));
});
afterAll(async () => {
  await browser?.close();
  await shop?.remove();
});

const LONG_MS = 120_000;

test(
  "on a narrow phone no text is cut off: in English, in Spanish, and in words longer by two fifths",
  async () => {
    const found: string[] = [];
    for (const language of ["en", "es"] as const) {
      const { page, context } = await openDevice(browser, shop.address, { language });
      for (const path of pathsOf(id)) {
        await show(page, path);
        found.push(...(await clippedTexts(page)).map((text) => `${language} ${path}: ${text}`));
        if (language === "es") continue;
        await pseudoTranslate(page);
        found.push(...(await clippedTexts(page)).map((text) => `longer ${path}: ${text}`));
      }
      await context.close();
    }
    expect(found).toEqual([]);
  },
  LONG_MS,
);
