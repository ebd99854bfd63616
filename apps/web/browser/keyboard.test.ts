import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { DESK, openDevice } from "./support/device.js";
import { show } from "./support/pages.js";
import { shopAndBrowser } from "./support/shop-and-browser.js";

const at = shopAndBrowser();

/** Nobody presses Tab more often than this to get anywhere. */
const MOST_TABS = 60;

const focusedName = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const element = document.activeElement === document.body ? null : document.activeElement;
    const labels = element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement ? element.labels : null;
    return (element?.getAttribute("aria-label") ?? labels?.[0]?.textContent ?? element?.textContent ?? "").trim();
  });

/** Whether a ring is drawn around what has the focus, or around the control that it is the hidden part of. */
const focusIsSeen = (page: Page): Promise<boolean> =>
  page.evaluate(() => {
    const element = document.activeElement;
    return [element, element?.closest("label")].some((candidate) => candidate && getComputedStyle(candidate).outlineStyle !== "none");
  });

/** Tabs until something of this name has the focus, and that it can be seen. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let k = 0; k < MOST_TABS; k++) {
    await page.keyboard.press("Tab");
    if (!name.test(await focusedName(page))) continue;
    expect(await focusIsSeen(page)).toBe(true);
    return;
  }
  throw new Error(`nothing called ${name} was reached with Tab`);
}

test("a case is started, described, undone and left with the keyboard alone", async () => {
  const { page } = await openDevice(at.browser, at.shop.address, { size: DESK });
  await show(page, "/cases");
  await tabTo(page, /New case/);
  await page.keyboard.press("Enter");
  await page.getByText("Which driveline is it?").waitFor();
  await tabTo(page, /Two-piece/);
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "The complaint" }).waitFor();
  await tabTo(page, /In one line/);
  await page.keyboard.type("By keyboard");
  await tabTo(page, /Road speed: From/);
  await page.keyboard.type("90,5");
  await tabTo(page, /Road speed: To/);
  await page.keyboard.type("70");
  // The slower end first, once both are left.
  await tabTo(page, /Floor/);
  const [, id = ""] = /\/cases\/([^/]+)\//.exec(page.url()) ?? [];
  await expect.poll(async () => (await at.shop.read(id)).complaint?.speedKmh, { timeout: 5000 }).toEqual([70, 90.5]);
  await page.keyboard.press("Control+z");
  await expect.poll(async () => (await at.shop.read(id)).complaint?.speedKmh, { timeout: 5000 }).not.toEqual([70, 90.5]);
  await page.keyboard.press("Control+y");
  await expect.poll(async () => (await at.shop.read(id)).complaint?.speedKmh, { timeout: 5000 }).toEqual([70, 90.5]);
  await page.keyboard.press("Space");
  await tabTo(page, /Settings|All cases/);
  await page.goto(`/cases/${id}/describe`);
  await tabTo(page, /Settings/);
  await page.keyboard.press("Enter");
  await page.getByRole("dialog").waitFor();
  await page.keyboard.press("Escape");
  expect(await page.getByRole("dialog").count()).toBe(0);
  await tabTo(page, /Gauge/);
  await page.keyboard.press("Enter");
  await page.waitForURL(/\/gauge$/);
});
