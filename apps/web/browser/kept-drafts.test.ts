import { newCase } from "@halfturn/casefile";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { accessibilityFaults } from "./support/check-page.js";
import { DESK, openDevice, PHONE } from "./support/device.js";
import { shopAndBrowser } from "./support/shop-and-browser.js";

const at = shopAndBrowser();

const length = (page: Page) => page.getByLabel("Length, joint centre to joint centre").first();
const open = (page: Page, fold: string) => page.locator("summary").filter({ hasText: fold }).first().click();
const lengthInShop = async (id: string) => (await at.shop.read(id)).drivelines[0]?.sections[0]?.lengthMm;

/** To another step and back, by the steps themselves. */
async function lookAway(page: Page): Promise<void> {
  await page.getByRole("link", { name: /Explain/ }).click();
  await page.waitForURL(/\/explain$/);
  await page.getByRole("link", { name: /Describe/ }).click();
  await page.waitForURL(/\/describe$/);
}

/** A case in which nothing was noted yet. */
async function begin(id: string): Promise<void> {
  const body = JSON.stringify(newCase({ id, title: id, layout: "one-piece", createdAt: "2026-05-04T07:30:00Z" }));
  await fetch(`${at.shop.address}/api/cases`, { method: "POST", body, headers: { "content-type": "application/json" } });
}

async function describe(example: string, size: typeof PHONE | typeof DESK = DESK) {
  const document = await at.shop.add(example);
  const device = await openDevice(at.browser, at.shop.address, { size });
  await device.page.goto(`/cases/${document.id}/describe`);
  await length(device.page).waitFor();
  return { ...device, id: document.id, before: document.drivelines[0]?.sections[0]?.lengthMm };
}

test("a number that cannot be kept yet is there after a look at another page and after a reload, with what to do about it", async () => {
  const { page, id, before, faults } = await describe("two-piece");
  await length(page).fill("11 bananas");
  await page.getByText(/Type a number such as/).waitFor();
  await lookAway(page);
  expect(await length(page).inputValue()).toBe("11 bananas");
  await page.reload();
  await page.getByText(/Type a number such as/).waitFor();
  expect(await length(page).inputValue()).toBe("11 bananas");
  expect(await lengthInShop(id)).toBe(before);
  // Out of its bounds: the message names the field and says what to do.
  await length(page).fill("3");
  await page
    .getByText("Length, joint centre to joint centre: it has to be at least 20 mm and at most 20000 mm. Look at the number")
    .waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  // Kept at last, it is no draft any more.
  await length(page).fill("1190");
  await expect.poll(() => lengthInShop(id), { timeout: 5000 }).toBe(1190);
  await page.reload();
  await length(page).waitFor();
  expect(await length(page).inputValue()).toBe("1190");
  expect(faults).toEqual([]);
});

test("a value from another device counts, and what was typed stands beside it until somebody chose", async () => {
  const { page, id } = await describe("corrected");
  const other = await openDevice(at.browser, at.shop.address, { size: DESK });
  await other.page.goto(`/cases/${id}/describe`);
  await length(page).fill("1200x");
  await page.getByRole("link", { name: /Explain/ }).click();
  await length(other.page).fill("1201");
  await expect.poll(() => lengthInShop(id), { timeout: 5000 }).toBe(1201);
  await page.getByRole("link", { name: /Describe/ }).click();
  await page.getByText("Typed here before and not kept: “1200x”.").waitFor();
  expect(await length(page).inputValue()).toBe("1201");
  await page.getByRole("button", { name: "Put it back" }).click();
  expect(await length(page).inputValue()).toBe("1200x");
  await length(page).fill("1203x");
  await length(other.page).fill("1202");
  await page.getByText("Typed here before and not kept: “1203x”.").waitFor();
  await page.getByRole("button", { name: "Forget it" }).click();
  expect(await length(page).inputValue()).toBe("1202");
  await page.reload();
  await length(page).waitFor();
  expect(await length(page).inputValue()).toBe("1202");
});

test("what is half typed for a gear stays with that gear when it is renamed, when that is undone and when another is removed, and goes with a row that is removed", async () => {
  await begin("rows");
  const { page, faults } = await openDevice(at.browser, at.shop.address, { size: DESK });
  await page.goto("/cases/rows/describe");
  const numbers = page.locator("main section").filter({ has: page.locator("h2", { hasText: "Numbers of the vehicle" }) });
  const fold = (title: string) => numbers.locator("details").filter({ has: page.locator("> summary", { hasText: title }) });
  await open(page, "Gears and slip");
  const gears = fold("Gears and slip");
  for (const _ of [1, 2]) await gears.getByRole("button", { name: "Add a gear" }).click();
  const [names, ratios] = [gears.getByLabel("Gear", { exact: true }), gears.getByLabel("Ratio")];
  const last = (await names.count()) - 1;
  await ratios.nth(last).fill("3.5x");
  const called = await names.nth(last).inputValue();
  await names.nth(last).fill("low");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect.poll(() => names.nth(last).inputValue()).toBe(called);
  expect(await ratios.nth(last).inputValue()).toBe("3.5x");
  await names.nth(last).fill("low");
  await gears
    .getByRole("button", { name: /^Take out gear/ })
    .nth(last - 1)
    .click();
  await expect.poll(() => names.count()).toBe(last);
  expect([await names.nth(last - 1).inputValue(), await ratios.nth(last - 1).inputValue()]).toEqual(["low", "3.5x"]);
  await page.reload();
  await open(page, "Gears and slip");
  expect([await names.nth(last - 1).inputValue(), await ratios.nth(last - 1).inputValue()]).toEqual(["low", "3.5x"]);
  await open(page, "What the engine drives");
  const driven = fold("What the engine drives");
  const add = driven.getByRole("button", { name: "Add an accessory" });
  await add.click();
  await driven.getByLabel("Ratio").fill("2x");
  await driven.getByRole("button", { name: /^Take out/ }).click();
  await add.click();
  expect(await driven.getByLabel("Ratio").inputValue()).toBe("1");
  expect(faults).toEqual([]);
});

test("an undo takes what was typed after it as well", async () => {
  const { page, before } = await describe("one-piece");
  await length(page).fill("1499");
  await length(page).fill("1499x");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect.poll(() => length(page).inputValue()).toBe(String(before));
  expect(await page.getByText("Typed here before").count()).toBe(0);
});

test("one of two numbers that go together waits for the other, over a reload, and both go into the case", async () => {
  const document = await at.shop.add("four-wheel-drive");
  const { page } = await openDevice(at.browser, at.shop.address, { size: DESK });
  await page.goto(`/cases/${document.id}/describe`);
  await open(page, "Tube and slip spline");
  const [outer, wall] = [page.getByLabel("Outer diameter").first(), page.getByLabel("Wall").first()];
  await wall.fill("");
  await outer.fill("70");
  await page.getByText("These go together").waitFor();
  await page.reload();
  await open(page, "Tube and slip spline");
  expect([await outer.inputValue(), await wall.inputValue()]).toEqual(["70", ""]);
  await wall.fill("36");
  await page.getByText("Wall: it has to be more than 0 mm and at most 20000 mm and less than 35 mm.").waitFor();
  await wall.fill("2.1");
  await expect
    .poll(async () => (await at.shop.read(document.id)).drivelines[0]?.sections[0]?.tube, { timeout: 5000 })
    .toEqual({ outerDiameterMm: 70, wallMm: 2.1, material: "steel" });
});

test("a browser that refuses its storage keeps what was typed over a change of page, without a word", async () => {
  const { page, faults } = await describe("three-piece", PHONE);
  await page.addInitScript(() => {
    Object.defineProperty(window, "sessionStorage", {
      get: () => {
        throw new DOMException("refused", "SecurityError");
      },
    });
  });
  await page.reload();
  await length(page).fill("12..");
  await lookAway(page);
  expect(await length(page).inputValue()).toBe("12..");
  expect(faults).toEqual([]);
});

const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });
const readout = (page: Page) => page.getByLabel("Reading in degrees");

test("a reading half typed under the vehicle is there after a look at another page and a reload, and goes once it is kept", async () => {
  await begin("under-it");
  const { page, faults } = await openDevice(at.browser, at.shop.address, { size: PHONE });
  const read = async () => (await at.shop.read("under-it")).gauging?.[0]?.readings.map(({ deg }) => deg);
  await page.goto("/cases/under-it/gauge");
  // What is said before the first reading stays as well.
  await page.getByText("On a drive-on lift", { exact: true }).tap();
  await page.getByRole("link", { name: /Describe/ }).tap();
  await page.getByRole("link", { name: /Gauge/ }).tap();
  await button(page, "Start reading").tap();
  await button(page, "2").tap();
  await button(page, "Decimal point").tap();
  await page.getByRole("link", { name: /Describe/ }).tap();
  await page.waitForURL(/\/describe$/);
  await page.getByRole("link", { name: /Gauge/ }).tap();
  expect(await readout(page).inputValue()).toBe("2.");
  await page.reload();
  await readout(page).waitFor();
  expect(await readout(page).inputValue()).toBe("2.");
  await button(page, "4").tap();
  await page.getByRole("group", { name: /lean/ }).getByRole("button", { name: "Top leans to the rear" }).tap();
  await expect.poll(read, { timeout: 5000 }).toEqual([2.4]);
  expect(await readout(page).inputValue()).toBe("");
  await page.reload();
  await readout(page).waitFor();
  expect(await readout(page).inputValue()).toBe("");
  expect(faults).toEqual([]);
});
