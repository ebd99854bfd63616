import { expect, test } from "vitest";
import { accessibilityFaults, clippedTexts } from "./support/check-page.js";
import { openDevice } from "./support/device.js";
import { shopAndBrowser } from "./support/shop-and-browser.js";

const at = shopAndBrowser();

const ADDRESSES = [
  ["/no-such-page", "en", "There is no such page", "All cases"],
  ["/no-such-page", "es", "Esta página no existe", "Todos los casos"],
  ["/cases/nowhere/explain", "en", "This case is not on this device", "All cases"],
] as const;

test.each(ADDRESSES)("%s (%s) says that nothing is there, and leads on to the cases", async (path, language, title, way) => {
  const { page, context, faults } = await openDevice(at.browser, at.shop.address, { language });
  await page.goto(path);
  await page.getByRole("heading", { level: 1, name: title }).waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(await clippedTexts(page)).toEqual([]);
  await page.getByRole("main").getByRole("link", { name: way }).click();
  await page.waitForURL(/\/cases$/);
  expect(faults).toEqual([]);
  await context.close();
});
