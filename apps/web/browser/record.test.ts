import type { Case } from "@halfturn/casefile";
import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { accessibilityFaults, clippedTexts, pseudoTranslate } from "./support/check-page.js";
import { DESK, openDevice, PHONE, THEMES } from "./support/device.js";
import { asFile, madeUpDrive } from "./support/road-test.js";
import { shopAndBrowser } from "./support/shop-and-browser.js";

const at = shopAndBrowser();
let twoPiece: Case;

beforeAll(async () => {
  twoPiece = await at.shop.add("two-piece");
});

const SHAFT = { part: "propeller-shaft", order: 1, amplitude: 1 } as const;

/** Long enough that naming the part takes seconds. */
const LONG_S = 900;
/** The page answers at once; a loaded machine takes about this long to draw it. */
const STOPS_WITHIN_MS = 1000;

const openRecord = async (page: Page, id: string): Promise<void> => {
  await page.goto(`/cases/${id}/record`);
  await page.getByRole("heading", { name: "What turns at that speed" }).waitFor();
};

/** The gear of the card that holds a heading: the page asks for one twice. */
const gear = (page: Page, card: string, label: string) =>
  page
    .locator("section")
    .filter({ has: page.getByRole("heading", { name: card }) })
    .getByText(label, { exact: true });

test("a recording is opened on a phone, the right part is named, and the case keeps it", async () => {
  const { page, faults } = await openDevice(at.browser, at.shop.address, { size: PHONE });
  await openRecord(page, twoPiece.id);
  await page.locator("input[type=file]").setInputFiles(await asFile(madeUpDrive(twoPiece, { gear: "5", shakes: SHAFT }), "drive.csv"));
  await page.getByText("400 samples per second").waitFor();
  await gear(page, "drive.csv", "5").tap();
  await page.getByRole("button", { name: "Name the part" }).tap();
  await page.getByRole("heading", { name: "The propeller shaft's first order" }).waitFor();
  await page.getByText("The vibration follows the propeller shaft's first order").waitFor();
  await page.waitForTimeout(1500);
  for (const theme of THEMES) {
    await page.evaluate((name) => document.documentElement.setAttribute("data-theme", name), theme);
    expect(await accessibilityFaults(page), theme).toEqual([]);
  }
  expect(await clippedTexts(page)).toEqual([]);
  // A peak says what turns at its rate: the shaft turned 30.8 to 40.1 times a second, and no other order passes through there alone.
  await page
    .getByRole("button", { name: /^\d\d\.\d\sHz, / })
    .first()
    .tap();
  await page
    .getByRole("listitem")
    .filter({ hasText: /^The propeller shaft's first order: 3\d\.\d\sHz$/ })
    .waitFor();
  await page.getByRole("button", { name: "Keep in the case" }).tap();
  await page.getByText("✓ Kept in the case").waitFor();
  await expect
    .poll(async () => (await at.shop.read(twoPiece.id)).recordings, { timeout: 5000 })
    .toMatchObject([{ file: "drive.csv", gear: "5" }]);
  expect((await at.shop.read(twoPiece.id)).recordings?.[0]?.heard).toMatchObject({
    speedFrom: "speed_mps",
    gear: "5",
    verdict: { part: "propeller-shaft", order: 1 },
  });
  // The file itself stays on the device, and opens again after a fresh start of the page.
  await page.reload();
  await page.getByRole("button", { name: "Open", exact: true }).tap();
  await page.getByText("400 samples per second").waitFor();
  expect(faults).toEqual([]);
});

test("a stretch is chosen with the arrow keys, and the part is named of it alone", async () => {
  const document = twoPiece;
  const { page } = await openDevice(at.browser, at.shop.address, { size: DESK });
  await openRecord(page, document.id);
  await page.locator("input[type=file]").setInputFiles(await asFile(madeUpDrive(document, { gear: "5", shakes: SHAFT }), "drive.csv"));
  await page.getByText("400 samples per second").waitFor();
  await gear(page, "drive.csv", "5").click();
  await page.getByRole("button", { name: "Name the part" }).click();
  await page.getByText(/^30\.0\ss of vibration/).waitFor();
  await page.getByRole("slider", { name: "Stretch from" }).focus();
  for (let presses = 0; presses < 3; presses++) await page.keyboard.press("PageUp");
  await page.getByText(/^(?!0\.0)\d+\.\d to 30\.0\ss$/).waitFor();
  await page.getByText(/^2\d\.\d\ss of vibration/).waitFor();
  await page.getByRole("heading", { name: "The propeller shaft's first order" }).waitFor();
});

test("without a recording three taps say what lies at a frequency", async () => {
  const document = await at.shop.add("one-piece");
  const { page } = await openDevice(at.browser, at.shop.address, { size: PHONE });
  await openRecord(page, document.id);
  await page.getByLabel("Felt at").fill("100");
  const turns = page.getByText("turns per second").nth(1);
  const rate = Number.parseFloat((await turns.textContent()) ?? "");
  expect(rate).toBeGreaterThan(10);
  await page.getByLabel("Frequency in Hz, if it is known").fill(String(rate));
  await page.getByText(/at 100\skm\/h can be:/).waitFor();
  await page.getByText("The propeller shaft's first order", { exact: true }).waitFor();
});

test("a file is dropped on the page, and a long search is stopped and started again", async () => {
  const document = await at.shop.add("three-piece");
  const { page, faults } = await openDevice(at.browser, at.shop.address, { size: DESK });
  await openRecord(page, document.id);
  const gearDriven = document.complaint?.gear ?? "1";
  const { name, mimeType, buffer } = await asFile(madeUpDrive(document, { gear: gearDriven, shakes: SHAFT, seconds: LONG_S }), "long.wav");
  const transfer = await page.evaluateHandle(
    ({ base64, type, called }) => {
      const carried = new DataTransfer();
      carried.items.add(new File([Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))], called, { type }));
      return carried;
    },
    { base64: buffer.toString("base64"), type: mimeType, called: name },
  );
  const place = page.getByText("WAV, CSV, TSV or UFF. It can also be dropped here.");
  await place.dispatchEvent("dragover", { dataTransfer: transfer });
  await place.dispatchEvent("drop", { dataTransfer: transfer });
  await page.getByRole("heading", { name: "long.wav" }).waitFor();
  await page.getByText("400 samples per second").waitFor();
  await page.getByText("The vibration itself").click();
  await page.getByRole("button", { name: "Name the part" }).click();
  const cancel = page.getByRole("button", { name: "Cancel" });
  await cancel.click();
  const stopped = performance.now();
  await page.getByRole("button", { name: "Name the part" }).waitFor();
  expect(performance.now() - stopped).toBeLessThan(STOPS_WITHIN_MS);
  expect(await cancel.count()).toBe(0);
  // Nothing comes after all: what was stopped is not shown a while later.
  await page.waitForTimeout(3000);
  expect(await page.getByRole("heading", { name: "What the vibration follows" }).count()).toBe(0);
  // The worker is free for the next one.
  await page.getByRole("button", { name: "Name the part" }).click();
  await page.getByText(/^Listening: [1-9]/).waitFor();
  expect(faults).toEqual([]);
});

test("what is no recording is refused in words, and nothing else is lost", async () => {
  const document = await at.shop.add("corrected");
  const { page, faults } = await openDevice(at.browser, at.shop.address, { size: PHONE, language: "es" });
  await page.goto(`/cases/${document.id}/record`);
  const input = page.locator("input[type=file]");
  await input.setInputFiles({ name: "foto.jpg", mimeType: "image/jpeg", buffer: Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16, 74, 70]) });
  await page.getByRole("alert").filter({ hasText: "Este archivo no se puede leer" }).waitFor();
  await input.setInputFiles(await asFile(madeUpDrive(document, { gear: document.complaint?.gear ?? "4", shakes: SHAFT }), "drive.wav"));
  await page.getByText("400 muestras por segundo").waitFor();
  await page.getByText("La propia vibración").tap();
  await page.getByRole("button", { name: "Nombrar la pieza" }).tap();
  await page.getByRole("heading", { name: "A qué sigue la vibración" }).waitFor();
  await page.waitForTimeout(1000);
  expect(await clippedTexts(page)).toEqual([]);
  await pseudoTranslate(page);
  expect(await clippedTexts(page)).toEqual([]);
  expect(faults).toEqual([]);
});
