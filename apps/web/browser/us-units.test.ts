import { beforeAll, expect, test } from "vitest";
import { DESK, openDevice } from "./support/device.js";
import { pathsOf, show } from "./support/pages.js";
import { shopAndBrowser } from "./support/shop-and-browser.js";

const at = shopAndBrowser();
let id: string;
let own: readonly string[];

beforeAll(async () => {
  const document = await at.shop.add("corrected");
  ({ id } = document);
  own = textsOf(document);
});

function textsOf(value: unknown): readonly string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(textsOf) : [];
}

const METRIC = /[\d,.]+\s?(?:mm|km\/h|m)(?![\p{L}\d/²])/gu;
const US = /[\d,.]+\s?(?:in|mph|ft)(?![\p{L}\d/])/gu;
/** A part that is bought in millimetres says them beside the inches. */
const BESIDE = /\(-?[\d.,]+\smm\)/g;
const LONG_MS = 120_000;

test(
  "in US units no page says a length or a road speed in another unit, in either language",
  async () => {
    const metric: string[] = [];
    let us = 0;
    for (const language of ["en", "es"] as const) {
      const { page, context } = await openDevice(at.browser, at.shop.address, { units: "us", language, size: DESK });
      for (const path of pathsOf(id)) {
        await show(page, path);
        // Whatever is folded away is read as well.
        await page.evaluate(() => {
          for (const fold of document.querySelectorAll("details")) fold.open = true;
        });
        const shown = ((await page.locator("main").textContent()) ?? "").replaceAll(/\s+/g, " ");
        // What a person wrote stays as it was written.
        const said = own
          .reduce((text, written) => (written.length > 3 ? text.replaceAll(written, " ") : text), shown)
          .replaceAll(BESIDE, "");
        metric.push(...(said.match(METRIC) ?? []).map((text) => `${language} ${path}: ${text}`));
        us += (said.match(US) ?? []).length;
      }
      await context.close();
    }
    expect(metric).toEqual([]);
    expect(us).toBeGreaterThan(20);
  },
  LONG_MS,
);
