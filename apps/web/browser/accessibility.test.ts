import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { accessibilityFaults } from "./support/check-page.js";
import { DESK, launch, openDevice, PHONE, THEMES } from "./support/device.js";
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

/** Three themes on every page. */
const LONG_MS = 180_000;

test.each(THEMES)(
  "no page breaks a rule of accessibility in the %s theme, nor the security policy",
  async (theme) => {
    const found: string[] = [];
    // The themes change colours, the size changes the order: both sizes once, every theme once.
    for (const size of theme === "light" ? [PHONE, DESK] : [PHONE]) {
      const { page, context, faults } = await openDevice(browser, shop.address, { theme, size });
      for (const path of pathsOf(id)) {
        await show(page, path);
        found.push(...(await accessibilityFaults(page)).map((fault) => `${size.width} ${path}: ${fault}`));
      }
      found.push(...faults);
      await context.close();
    }
    expect(found).toEqual([]);
  },
  LONG_MS,
);

test("the settings can be changed on any page, at once, and stay", async () => {
  const { page } = await openDevice(browser, shop.address);
  await show(page, `/cases/${id}/describe`);
  await page.getByRole("button", { name: "Settings" }).click();
  const sheet = page.getByRole("dialog");
  await sheet.getByText("Dark", { exact: true }).click();
  expect(await page.locator("html").getAttribute("data-theme")).toBe("dark");
  expect(await accessibilityFaults(page)).toEqual([]);
  await sheet.getByText("US", { exact: true }).click();
  await sheet.getByText("Español", { exact: true }).click();
  await page.getByRole("dialog").getByRole("button", { name: "Cerrar" }).click();
  expect(await page.locator("html").getAttribute("lang")).toBe("es");
  await page.getByText("mph").first().waitFor();
  await page.getByRole("heading", { name: "La queja" }).waitFor();
});
