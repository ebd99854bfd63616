import { type Case, newCase } from "@halfturn/casefile";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { type Counted, counted } from "./support/counted.js";
import { DESK, openDevice, PHONE } from "./support/device.js";
import { shopAndBrowser } from "./support/shop-and-browser.js";

const at = shopAndBrowser();

/** Two taps to set up, four for each of six readings; a slip costs its button and the number once more; one look at the yokes of each section. */
const MOST_TAPS = 2 + 6 * 4 + 5 + 2;
/** The same with keys, and the way with Tab and the arrows to the choices and to the mending button. */
const MOST_KEYS = 40;

async function newTwoPiece(id: string): Promise<void> {
  const body = JSON.stringify(newCase({ id, title: id, layout: "two-piece", createdAt: "2026-05-04T07:30:00Z" }));
  const answer = await fetch(`${at.shop.address}/api/cases`, { method: "POST", body, headers: { "content-type": "application/json" } });
  expect(answer.ok).toBe(true);
}

const button = (page: Page, name: string | RegExp) => page.getByRole("button", { name, exact: typeof name === "string" });
const readingsOf = async (id: string): Promise<Case["gauging"]> => (await at.shop.read(id)).gauging;

async function tapNumber(page: Page, { tap }: Counted, text: string): Promise<void> {
  for (const sign of text) await tap(button(page, sign === "." ? "Decimal point" : sign));
}

async function openGauge(page: Page, id: string): Promise<void> {
  await page.goto(`/cases/${id}/gauge`);
  await page.getByRole("heading", { name: "How does the vehicle stand?" }).waitFor();
}

/** Whether the whole of something is in sight inside the page, nothing scrolled. */
const inSight = (page: Page, selector: string): Promise<boolean> =>
  page.evaluate((of) => {
    const page = document.querySelector("main")?.getBoundingClientRect();
    const box = document.querySelector(of)?.getBoundingClientRect();
    return (
      page !== undefined &&
      box !== undefined &&
      box.top >= page.top &&
      box.bottom <= page.bottom &&
      box.left >= 0 &&
      box.right <= innerWidth
    );
  }, selector);

test("a two-piece driveline is gauged by touch on a phone, and a mistyped reading is caught and mended on the spot", async () => {
  await newTwoPiece("by-touch");
  const { page, faults } = await openDevice(at.browser, at.shop.address, { size: PHONE });
  await openGauge(page, "by-touch");
  const hand = counted(page);
  await hand.tap(page.getByText("On a drive-on lift", { exact: true }));
  await hand.tap(button(page, "Start reading"));
  for (const of of ["main svg", "[aria-label='Reading in degrees']", "[aria-label='Number pad']"])
    expect(await inSight(page, of), of).toBe(true);

  const read = async (number: string, end: string): Promise<void> => {
    await tapNumber(page, hand, number);
    await hand.tap(page.getByRole("group", { name: /lower|lean/ }).getByRole("button", { name: end }));
  };
  await read("2.4", "Top leans to the rear");
  await read("5.6", "Rear end lower");
  await read("6.5", "Rear end lower");
  const alert = page.getByRole("alert").filter({ hasText: "The two ends of one tube disagree" });
  await alert.waitFor();
  await hand.tap(alert.getByRole("button", { name: /Read again: .* near its rear end/ }));
  for (const of of ["main svg", "[aria-label='Number pad']"]) expect(await inSight(page, of), of).toBe(true);
  await tapNumber(page, hand, "5.6");
  await hand.tap(button(page, "Keep"));
  await page.getByText("does not fit").first().waitFor({ state: "detached" });
  await read("5.1", "Rear end lower");
  await read("5.1", "Rear end lower");
  await read("2.1", "Top leans to the rear");
  await page.getByRole("heading", { name: "Every place is read" }).waitFor();
  for (const section of ["Section front", "Section back"]) {
    await hand.tap(page.getByRole("radiogroup", { name: section }).getByText("In line", { exact: true }));
  }
  expect(hand.actions()).toBeLessThanOrEqual(MOST_TAPS);
  await expect
    .poll(async () => (await readingsOf("by-touch"))?.[0]?.phasings, { timeout: 5000 })
    .toEqual([
      { section: "front", phasingDeg: 0 },
      { section: "back", phasingDeg: 0 },
    ]);
  await expect
    .poll(async () => (await readingsOf("by-touch"))?.[0]?.readings, { timeout: 5000 })
    .toEqual([
      { at: "source", face: "square", deg: 2.4, topLeans: "driven-end", side: "left" },
      { at: "front:source-end", deg: 5.6, lower: "driven-end", side: "left" },
      { at: "front:driven-end", deg: 5.6, lower: "driven-end", side: "left" },
      { at: "back:source-end", deg: 5.1, lower: "driven-end", side: "left" },
      { at: "back:driven-end", deg: 5.1, lower: "driven-end", side: "left" },
      { at: "driven", face: "square", deg: 2.1, topLeans: "driven-end", side: "left" },
    ]);
  // 5.6 - 2.4, 5.6 - 5.1 and 5.1 - 2.1 of shafts in one plane.
  for (const angle of ["3.20°", "0.50°", "3.00°"]) await page.getByRole("listitem").filter({ hasText: angle }).first().waitFor();
  expect(faults).toEqual([]);
});

test("with the keyboard alone, and a lower end noted the wrong way round is mended with one button", async () => {
  await newTwoPiece("by-keys");
  const { page, faults } = await openDevice(at.browser, at.shop.address, { size: DESK });
  await openGauge(page, "by-keys");
  const hand = counted(page);
  const focused = () => page.evaluate(() => document.activeElement?.closest("label, button")?.textContent ?? "");
  const go = async (key: string, to: RegExp): Promise<void> => {
    for (let presses = 0; presses < 20 && !to.test(await focused()); presses++) await hand.press(key);
    expect(await focused()).toMatch(to);
  };
  await go("Tab", /On a drive-on lift/);
  await hand.press("Space");
  await hand.press("Enter");
  await page.getByLabel("Reading in degrees").waitFor();

  await hand.type("2.4");
  await hand.press("ArrowRight");
  await hand.press("Enter");
  await hand.type("5.6");
  await hand.press("Enter");
  await hand.press("ArrowLeft");
  await hand.type("5.6");
  await hand.press("Enter");
  await page.getByRole("alert").filter({ hasText: "Lower end likely noted the wrong way round" }).waitFor();
  await go("Shift+Tab", /^Rear end lower/);
  await hand.press("Enter");
  await page.getByRole("alert").waitFor({ state: "detached" });
  // A gauge that types needs nothing but its own keys from here on.
  for (const number of ["5.1", "5.1", "2.1"]) {
    await hand.type(number);
    await hand.press("Enter");
  }
  await page.getByRole("heading", { name: "Every place is read" }).waitFor();
  expect(hand.actions()).toBeLessThanOrEqual(MOST_KEYS);
  await expect
    .poll(
      async () => (await readingsOf("by-keys"))?.[0]?.readings.map((reading) => ("face" in reading ? reading.topLeans : reading.lower)),
      { timeout: 5000 },
    )
    .toEqual(Array.from({ length: 6 }, () => "driven-end"));
  expect(faults).toEqual([]);
});

test("a wrong state is said at once, bad input stays where it is, and a number near upright or too steep is asked about", async () => {
  await newTwoPiece("asked");
  const { page } = await openDevice(at.browser, at.shop.address, { size: PHONE });
  await openGauge(page, "asked");
  await page.getByText("Hanging", { exact: true }).tap();
  await page.getByRole("alert").filter({ hasText: "These are not road angles" }).first().waitFor();
  await button(page, "Read anyway").waitFor();
  await page.getByText("On the ground", { exact: true }).tap();
  await button(page, "Start reading").tap();
  const readout = page.getByLabel("Reading in degrees");
  await readout.waitFor();

  await page.keyboard.type("-2.4");
  await page.keyboard.press("Enter");
  await page.getByText("No sign is needed").waitFor();
  expect(await readout.inputValue()).toBe("-2.4");
  await page.keyboard.press("Escape");
  await page.keyboard.type("2.4");
  await page.keyboard.press("Enter");
  await page.getByText("Which way does the top lean? Tap it.").waitFor();
  expect(await readout.inputValue()).toBe("2.4");

  await page.keyboard.press("Escape");
  await page.keyboard.type("87,6");
  await button(page, /Top leans to the rear.*Keep/).tap();
  await button(page, "On a face: 2.4° off plumb").tap();
  await expect
    .poll(async () => (await readingsOf("asked"))?.[0]?.readings, { timeout: 5000 })
    .toEqual([{ at: "source", face: "square", deg: 2.4, topLeans: "driven-end", side: "left" }]);
  // A decimal sign missed with a glove on.
  await page.getByText("Lower end as before: look at it.").waitFor();
  await page.keyboard.type("56");
  await page.keyboard.press("Enter");
  await button(page, "It shows 5.6°").tap();
  await expect
    .poll(async () => (await readingsOf("asked"))?.[0]?.readings[1], { timeout: 5000 })
    .toEqual({ at: "front:source-end", deg: 5.6, lower: "driven-end", side: "left" });
  await button(page, "Always from the left").tap();
  await page.getByText("From the right the gauge's zero counts the other way.").waitFor();
});
