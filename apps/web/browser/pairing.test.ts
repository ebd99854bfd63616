import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { accessibilityFaults, clippedTexts } from "./support/check-page.js";
import { launch, openDevice, PHONE, THEMES } from "./support/device.js";
import { type LanShop, openLanShop } from "./support/lan-shop.js";

let shop: LanShop;
let browser: Browser;

beforeAll(async () => {
  [shop, browser] = await Promise.all([openLanShop(), launch()]);
});
afterAll(async () => {
  await browser?.close();
  await shop?.remove();
});

/** A phone of the network that the shop does not know. */
async function strangePhone(path: string, language: "en" | "es" = "en"): Promise<Page> {
  const context = await browser.newContext({ viewport: PHONE, baseURL: shop.network, hasTouch: true, ignoreHTTPSErrors: true });
  await context.addInitScript(
    (text) => {
      if (localStorage.getItem("halfturn-settings") === null) localStorage.setItem("halfturn-settings", text);
    },
    JSON.stringify({ theme: "light", language, units: "metric" }),
  );
  const page = await context.newPage();
  await page.goto(path);
  await page.getByRole("button", { name: /^(Let it in|Dar acceso)$/ }).waitFor();
  return page;
}

/** What the shop's own screen shows: the code, without the gap it is read with. */
async function shownCode(): Promise<string> {
  const { page, context } = await openDevice(browser, shop.home);
  await page.goto("/settings");
  await page.getByRole("button", { name: "Show a code" }).click();
  const code = page.getByText(/^\d{4} \d{4}$/);
  await code.waitFor();
  const text = (await code.textContent()) ?? "";
  await context.close();
  return text.replace(" ", "");
}

const another = (code: string): string => code.replaceAll(/\d/g, (digit) => String((Number(digit) + 1) % 10));
const codeField = (page: Page) => page.getByLabel("Code", { exact: true });
const letIn = (page: Page) => page.getByRole("button", { name: "Let it in" });
/** Presses the button and says what the shop answers. */
async function claim(page: Page): Promise<number> {
  const answered = page.waitForResponse(/\/api\/pairing\/claim$/);
  await letIn(page).tap();
  return (await answered).status();
}
const isLetIn = (page: Page): Promise<boolean> => page.evaluate(async () => (await fetch("/api/cases")).ok);
const fault = (page: Page) => page.getByRole("status").filter({ hasText: "That code does not count" });

test("a code that is typed lets a phone in, a wrong one before it costs nothing that was typed", async () => {
  const code = await shownCode();
  const page = await strangePhone("/pair");
  expect(await letIn(page).isDisabled()).toBe(true);
  await page.getByLabel("Name of this device").fill("Phone under the truck");
  await codeField(page).fill(another(code));
  await letIn(page).tap();
  await fault(page).waitFor();
  expect(await codeField(page).inputValue()).toBe(another(code));
  // Typed as it is shown, with its gap.
  await codeField(page).fill(`${code.slice(0, 4)} ${code.slice(4)}`);
  await letIn(page).tap();
  await page.waitForURL(/\/cases$/);
  expect(await isLetIn(page)).toBe(true);
  const home = await openDevice(browser, shop.home);
  await home.page.goto("/settings");
  await home.page.getByText("Phone under the truck").waitFor();
  // A code lets one device in, and no second one.
  const second = await strangePhone(`/pair#${code}`);
  expect(await codeField(second).inputValue()).toBe(code);
  await letIn(second).tap();
  await fault(second).waitFor();
  expect(await isLetIn(second)).toBe(false);
});

test("a code that is five minutes old, or was followed by another, does not count", async () => {
  const [first, page] = [await shownCode(), await strangePhone("/pair")];
  const second = await shownCode();
  await codeField(page).fill(first);
  expect(await claim(page)).toBe(403);
  await fault(page).waitFor();
  shop.putForward(5 * 60_000);
  await codeField(page).fill(second);
  expect(await claim(page)).toBe(403);
  expect(await isLetIn(page)).toBe(false);
  await codeField(page).fill(await shownCode());
  expect(await claim(page)).toBe(201);
  await page.waitForURL(/\/cases$/);
  expect(await isLetIn(page)).toBe(true);
});

test("after five wrong tries even the right code has to wait", async () => {
  // The wrong tries before are forgotten by now.
  shop.putForward(11 * 60_000);
  const page = await strangePhone("/pair");
  await codeField(page).fill(another(await shownCode()));
  for (let tries = 0; tries < 5; tries++) expect(await claim(page)).toBe(403);
  await codeField(page).fill(await shownCode());
  expect(await claim(page)).toBe(429);
  await page.getByText("Too many tries.").waitFor();
  expect(await isLetIn(page)).toBe(false);
});

test("a code half typed is still there after a look at another page and a reload", async () => {
  const page = await strangePhone("/pair");
  await codeField(page).fill("1234");
  await page.getByLabel("Name of this device").fill("Tablet");
  await page.getByRole("link", { name: "All cases" }).tap();
  await page.waitForURL(/\/cases$/);
  await page.goBack();
  expect(await codeField(page).inputValue()).toBe("1234");
  await page.reload();
  expect(await codeField(page).inputValue()).toBe("1234");
  expect(await page.getByLabel("Name of this device").inputValue()).toBe("Tablet");
});

test("the page keeps the rules of accessibility in every theme, and no word is cut off in Spanish", async () => {
  const page = await strangePhone("/pair", "es");
  expect(await clippedTexts(page)).toEqual([]);
  for (const theme of THEMES) {
    await page.evaluate((name) => document.documentElement.setAttribute("data-theme", name), theme);
    expect(await accessibilityFaults(page), theme).toEqual([]);
  }
});
