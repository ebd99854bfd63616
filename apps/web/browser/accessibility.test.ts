import { beforeAll, expect, test } from "vitest";
import { accessibilityFaults } from "./support/check-page.js";
import { DESK, openDevice, PHONE, THEMES } from "./support/device.js";
import { pathsOf, show } from "./support/pages.js";
import { shopAndBrowser } from "./support/shop-and-browser.js";

const at = shopAndBrowser();
let id: string;

beforeAll(async () => {
  ({ id } = await at.shop.add("corrected"));
});

/** Three themes on every page. */
const LONG_MS = 180_000;

test.each(THEMES)(
  "no page breaks a rule of accessibility in the %s theme, nor the security policy",
  async (theme) => {
    const found: string[] = [];
    // The themes change colours, the size changes the order: both sizes once, every theme once.
    for (const size of theme === "light" ? [PHONE, DESK] : [PHONE]) {
      const { page, context, faults } = await openDevice(at.browser, at.shop.address, { theme, size });
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
  const { page } = await openDevice(at.browser, at.shop.address);
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
