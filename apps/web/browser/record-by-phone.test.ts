import { readFileSync } from "node:fs";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { findBrowser, openDevice, PHONE } from "./support/device.js";
import { openShop, type Shop } from "./support/shop.js";

/** Of four seconds one may be lost, and the pauses of a page's timer wander. */
const WITHOUT_LAST_SECOND = 0.6;

let shop: Shop;
let browser: Browser;

/** The browser's own stand-in for a microphone: it beeps once a second, and nobody is asked. */
const FAKE_SOUND = ["--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream"];

beforeAll(async () => {
  const args = ["--headless", "--no-sandbox", "--disable-gpu", "--no-first-run", ...FAKE_SOUND];
  [shop, browser] = await Promise.all([openShop(), chromium.launch({ executablePath: findBrowser(), args })]);
});
afterAll(async () => {
  await browser?.close();
  await shop?.remove();
});

const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });

async function openRecord(example: string) {
  const { id } = await shop.add(example);
  const device = await openDevice(browser, shop.address, { size: PHONE });
  await device.page.goto(`/cases/${id}/record`);
  await button(device.page, "Open a file").waitFor();
  return { ...device, id };
}

test("the motion sensor makes a file with its true rate, with the caution that the driver never operates it beside the button", async () => {
  const { page, faults } = await openRecord("two-piece");
  await page.getByText("On a road test the driver drives.").waitFor();
  await button(page, "Record its motion").tap();
  await page.getByText(/^Recording: /).waitFor();
  // A sensor of some 50 events a second; how many there truly were is what the page has to find out.
  const sent = await page.evaluate(async () => {
    const began = performance.now();
    const times: number[] = [];
    while (performance.now() - began < 3000) {
      const z = 9.8 + Math.sin(2 * Math.PI * 8 * (performance.now() / 1000));
      times.push(performance.now() / 1000);
      dispatchEvent(new DeviceMotionEvent("devicemotion", { accelerationIncludingGravity: { x: 0.1, y: 0.2, z } }));
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    const steps = times.slice(1).map((time, k) => time - (times[k] as number));
    const usual = steps.sort((a, b) => a - b)[Math.floor(steps.length / 2)] as number;
    return { mean: steps.length / steps.reduce((sum, step) => sum + step, 0), usual: 1 / usual };
  });
  await button(page, "Stop").tap();
  const clock = page.getByText(/samples per second, .*\ss\. /);
  await clock.waitFor();
  const rate = Number.parseFloat((await clock.textContent()) ?? "");
  // A busy machine leaves events out: the rate is that of the steps between, no lower than the mean and no higher than the usual step tells.
  expect(rate).toBeGreaterThan(sent.mean * 0.95);
  expect(rate).toBeLessThan(sent.usual * 1.05);
  await page.getByRole("heading", { name: /^road-test-.*\.csv$/ }).waitFor();
  // It is on the device's shelf, and can be taken away as a file.
  const saved = page.waitForEvent("download");
  await button(page, "Save as a file").tap();
  expect((await saved).suggestedFilename()).toMatch(/^road-test-.*\.csv$/);
  expect(faults).toEqual([]);
});

test("the microphone is recorded by a worklet of our own under the app's security policy", async () => {
  const { page, faults } = await openRecord("one-piece");
  await button(page, "Record sound").tap();
  await page.getByText(/^Recording: [2-9]\ss/).waitFor();
  await button(page, "Stop").tap();
  await page.getByRole("heading", { name: /^road-test-.*\.wav$/ }).waitFor();
  const clock = page.getByText(/samples per second, .*\ss\. /);
  await clock.waitFor();
  expect(Number.parseFloat(((await clock.textContent()) ?? "").replace(",", ""))).toBeLessThanOrEqual(2100);
  expect(faults).toEqual([]);
});

/** Moves the device for a while, some 50 times a second; says how often. */
const move = (page: Page, ms: number): Promise<number> =>
  page.evaluate(async (during) => {
    const began = performance.now();
    let count = 0;
    while (performance.now() - began < during) {
      dispatchEvent(new DeviceMotionEvent("devicemotion", { accelerationIncludingGravity: { x: 0, y: 0, z: 9.8 + Math.sin(count) } }));
      count++;
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    return count;
  }, ms);

/** The rows of a saved table, without its heads. */
async function savedRows(page: Page): Promise<number> {
  const saved = page.waitForEvent("download");
  await button(page, "Save as a file").tap();
  const lines = readFileSync(await (await saved).path(), "utf8")
    .trimEnd()
    .split("\n");
  return lines.length - 1;
}

test("a reload in the middle of a recording costs its last second at most, and leaving the page costs nothing", async () => {
  const { page, id, faults } = await openRecord("corrected");
  await button(page, "Record its motion").tap();
  await page.getByText(/^Recording: /).waitFor();
  const before = await move(page, 4000);
  await page.reload();
  await page.getByText(/was broken off. What there is of it was kept/).waitFor();
  await button(page, "Make it a recording").tap();
  await page.getByRole("heading", { name: /^road-test-.*\.csv$/ }).waitFor();
  const rows = await savedRows(page);
  expect(rows).toBeGreaterThan(before * WITHOUT_LAST_SECOND);
  expect(rows).toBeLessThanOrEqual(before);
  expect(await page.getByText(/was broken off/).count()).toBe(0);
  // Once more, and away to another step while it runs.
  await button(page, "Record its motion").tap();
  await page.getByText(/^Recording: /).waitFor();
  await move(page, 1500);
  await page.getByRole("link", { name: /Describe/ }).tap();
  await page.waitForURL(/\/describe$/);
  await page.goto(`/cases/${id}/record`);
  await page.getByText(/was broken off/).waitFor();
  await button(page, "Delete").first().tap();
  await button(page, "Delete what there is of it").tap();
  await page.getByText(/was broken off/).waitFor({ state: "detached" });
  await page.reload();
  await button(page, "Record its motion").waitFor();
  expect(await page.getByText(/was broken off/).count()).toBe(0);
  expect(faults).toEqual([]);
});
