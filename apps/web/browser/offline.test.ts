import { expect, test } from "vitest";
import { installed, openDevice } from "./support/device.js";
import { STEPS, show } from "./support/pages.js";
import { shopAndBrowser } from "./support/shop-and-browser.js";

const at = shopAndBrowser();

test("with the server gone every page opens, edits are kept over a restart of the app, and are sent on its return", async () => {
  const { id } = await at.shop.add("corrected");
  const { page, faults } = await openDevice(at.browser, at.shop.address);
  await show(page, `/cases/${id}/describe`);
  await installed(page);
  await at.shop.stop();
  await page.getByLabel("In one line").fill("Written without a network");
  await page.getByText(/1 case waits here/).waitFor();
  for (const step of STEPS) {
    await show(page, `/cases/${id}/${step}`);
    expect(await page.locator("main").textContent()).not.toBe("");
  }
  await show(page, "/cases");
  await page.getByText("Written without a network").waitFor();
  await show(page, `/cases/${id}/describe`);
  expect(await page.getByLabel("In one line").inputValue()).toBe("Written without a network");
  await at.shop.start();
  await page.getByText(/1 case waits here/).waitFor({ state: "detached", timeout: 40_000 });
  expect((await at.shop.read(id)).title).toBe("Written without a network");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect.poll(async () => (await at.shop.read(id)).title, { timeout: 5000 }).not.toBe("Written without a network");
  expect(faults).toEqual([]);
}, 120_000);

test("a case that is started without a network is on the server after it", async () => {
  const { page, context } = await openDevice(at.browser, at.shop.address);
  await show(page, "/cases");
  await installed(page);
  await page.reload();
  await context.setOffline(true);
  await page.getByRole("link", { name: "New case" }).click();
  await page.getByRole("button", { name: /Two-piece/ }).click();
  await page.getByLabel("In one line").fill("Started in the yard");
  await page.getByText(/1 case waits here/).waitFor();
  const [, id = ""] = /\/cases\/([^/]+)\//.exec(page.url()) ?? [];
  await context.setOffline(false);
  await expect.poll(async () => (await at.shop.read(id)).title, { timeout: 15_000 }).toBe("Started in the yard");
}, 60_000);
