import { beforeAll, expect, test } from "vitest";
import { clippedTexts, pseudoTranslate } from "./support/check-page.js";
import { openDevice, PHONE } from "./support/device.js";
import { pathsOf, show } from "./support/pages.js";
import { shopAndBrowser } from "./support/shop-and-browser.js";
import { stillness } from "./support/stillness.js";

const at = shopAndBrowser();
let id: string;

beforeAll(async () => {
  ({ id } = await at.shop.add("corrected"));
});

test("a text that is cut off, or wider than the phone, is seen", async () => {
  const { page, context } = await openDevice(at.browser, at.shop.address);
  await show(page, "/settings");
  expect(await clippedTexts(page)).toEqual([]);
  await page.evaluate(() => {
    const [cut, wide] = [document.createElement("p"), document.createElement("p")];
    cut.textContent = "cut off";
    cut.style.cssText = "width: 1rem; overflow: hidden; white-space: nowrap";
    wide.textContent = "too wide";
    wide.style.cssText = "width: 30rem; max-width: none";
    document.querySelector("main > div")?.append(cut, wide);
  });
  expect(await clippedTexts(page)).toEqual([expect.stringContaining("sideways"), "cut off"]);
  await context.close();
});

test("how far a case has come stands on one line of a narrow phone, on two in longer words", async () => {
  // Gauged and no further.
  const { title } = await at.shop.add("two-piece");
  for (const [language, most] of [
    ["en", 1],
    ["es", 2],
  ] as const) {
    const { page, context } = await openDevice(at.browser, at.shop.address, { language });
    await show(page, "/cases");
    const steps = page.getByRole("listitem").filter({ hasText: title }).getByRole("img");
    await expect.poll(() => steps.count()).toBe(2);
    const tops = await steps.evaluateAll((all) =>
      all.flatMap((one) => {
        const words = document.createRange();
        words.selectNodeContents(one);
        return [...words.getClientRects()].map(({ top }) => Math.round(top));
      }),
    );
    expect(new Set(tops).size).toBeLessThanOrEqual(most);
    await context.close();
  }
});

test("the step that is open stands whole in the strip of a narrow phone, whichever was open before", async () => {
  const { page, context } = await openDevice(at.browser, at.shop.address);
  await show(page, `/cases/${id}/describe`);
  const strip = page.getByRole("navigation", { name: "Steps" });
  for (const step of ["Gauge", "Explain", "Correct", "Prove", "Report", "Gauge"]) {
    await strip.getByRole("link", { name: new RegExp(`^${step}`) }).tap();
    await expect.poll(() => strip.locator("[aria-current]").textContent()).toContain(step);
    await stillness(page);
    const { left, right } = await strip.locator("[aria-current]").evaluate((one) => one.getBoundingClientRect());
    expect([left >= 0, right <= PHONE.width], step).toEqual([true, true]);
    // Before the last, what comes next is in sight as well.
    if (step !== "Report") expect(right, step).toBeLessThan(PHONE.width - 40);
  }
  await context.close();
});

const LONG_MS = 120_000;

test(
  "on a narrow phone no text is cut off: in English, in Spanish, and in words longer by two fifths",
  async () => {
    const found: string[] = [];
    for (const language of ["en", "es"] as const) {
      const { page, context } = await openDevice(at.browser, at.shop.address, { language });
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
