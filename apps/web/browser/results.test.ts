import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { accessibilityFaults } from "./support/check-page.js";
import { DESK, type Device, openDevice, PHONE } from "./support/device.js";
import { gaugedAfter } from "./support/gauged-after.js";
import { pdfText } from "./support/pdf-text.js";
import type { Shop } from "./support/shop.js";
import { shopAndBrowser } from "./support/shop-and-browser.js";

const at = shopAndBrowser();

const main = (page: Page) => page.locator("main");
const whatIf = (page: Page) => page.getByText("Not measured.");
const equivalent = (page: Page) => main(page).locator("section", { hasText: "Exact answer" }).locator("p").first();

/** Resolves when the server holds what the page shows. */
async function held(id: string, is: (document: Awaited<ReturnType<Shop["read"]>>) => boolean) {
  for (let tries = 0; tries < 60; tries++) {
    const document = await at.shop.read(id);
    if (is(document)) return document;
    await new Promise((resolve) => setTimeout(resolve, 250));
  }
  throw new Error("the server never got it");
}

/** Saves a case as another device would. */
async function saveElsewhere(document: Awaited<ReturnType<Shop["read"]>>): Promise<void> {
  const place = `${at.shop.address}/api/cases/${document.id}`;
  const tag = (await fetch(place)).headers.get("etag") ?? "";
  const headers = { "content-type": "application/json", "if-match": tag, "x-halfturn-device": "desk" };
  const answer = await fetch(place, { method: "PUT", headers, body: JSON.stringify(document) });
  if (!answer.ok) throw new Error(`${answer.status} ${await answer.text()}`);
}

async function drag(page: Page, name: string, pixelsUp: number): Promise<void> {
  const handle = page.getByRole("slider", { name });
  await handle.scrollIntoViewIfNeeded();
  const box = await handle.boundingBox();
  if (!box) throw new Error(`no handle ${name}`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x, y - pixelsUp, { steps: 8 });
  await page.mouse.up();
}

async function explained({ page }: Device): Promise<void> {
  await page.getByText(/^J2 runs at/).waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  const measured = await equivalent(page).textContent();
  await drag(page, "Move J2 up or down", 20);
  await whatIf(page).waitFor();
  expect(await page.getByRole("slider", { name: "Move J2 up or down" }).getAttribute("aria-valuetext")).toMatch(/^\d+\smm up$/);
  await expect.poll(() => equivalent(page).textContent()).not.toBe(measured);
  await page.getByRole("button", { name: "Back to the measured" }).click();
  await expect.poll(() => equivalent(page).textContent()).toBe(measured);
  await page.getByRole("slider", { name: /Tilt .*pinion/i }).press("ArrowUp");
  await whatIf(page).waitFor();
  expect(await page.getByRole("slider", { name: /Tilt .*pinion/i }).getAttribute("aria-valuetext")).toBe("0.1° up");
  await page.getByRole("button", { name: "Back to the measured" }).click();
  expect(await whatIf(page).count()).toBe(0);
}

/** Where the few draws of a move and all of them part: an interval that the limit only just lies outside of. */
async function judgedAtRest({ page }: Device): Promise<void> {
  const verdict = main(page)
    .locator("section", { hasText: "Exact answer" })
    .getByText(/within limits|uncertain/)
    .first();
  await verdict.waitFor();
  const source = page.getByRole("slider", { name: /^Tilt /i }).first();
  await source.press("ArrowUp");
  await source.press("ArrowUp");
  expect(await source.getAttribute("aria-valuetext")).toBe("0.2° up");
  await expect.poll(() => verdict.textContent()).toMatch(/within limits$/);
  await page.getByRole("button", { name: "Back to the measured" }).click();
}

async function corrected({ page }: Device, id: string): Promise<void> {
  const plan = page.getByRole("article", { name: "Plan 1" });
  await plan.waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  const slider = page.getByRole("slider", { name: "Spring pad wedges" });
  await slider.press("ArrowRight");
  const next = await slider.getAttribute("aria-valuetext");
  expect(next).toMatch(/^\d(\.\d)?° pinion nose up$/);
  await page.getByText("With the change", { exact: true }).first().waitFor();
  await plan.getByText("The work, step by step").click();
  expect(await plan.getByText(/^⚠ Caution: /).count()).toBeGreaterThan(1);
  await plan.getByRole("button", { name: "Choose this plan" }).click();
  await page.getByRole("button", { name: "Mark as made" }).click();
  const { corrections } = await held(id, (document) => document.corrections?.at(-1)?.state === "made");
  expect(corrections).toHaveLength(1);
  expect(corrections?.[0]?.changes.length).toBeGreaterThan(0);
}

async function proved({ page }: Device, id: string): Promise<void> {
  await page.getByText("Gauge again after the work").first().waitFor();
  await saveElsewhere(gaugedAfter(await at.shop.read(id)));
  await page.getByText("Every shaft stands as foretold, within the uncertainty of both.").waitFor();
  await page.getByText("Every number").click();
  expect(await page.getByRole("table").count()).toBe(2);
  expect(await accessibilityFaults(page)).toEqual([]);
}

test("from the explanation over the chosen plan to the proof, and the report that says so", async () => {
  const { id, title } = await at.shop.add("two-piece");
  const device = await openDevice(at.browser, at.shop.address, { size: DESK });
  const { page } = device;
  await page.goto(`/cases/${id}/explain`);
  await explained(device);
  await judgedAtRest(device);
  await page.goto(`/cases/${id}/correct`);
  await corrected(device, id);
  await page.goto(`/cases/${id}/prove`);
  await proved(device, id);

  await page.goto(`/cases/${id}/report`);
  await page.getByRole("heading", { name: "Conclusion" }).waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  const downloading = page.waitForEvent("download");
  await page.getByRole("button", { name: "Download the PDF" }).click();
  const download = await downloading;
  const name = download.suggestedFilename();
  expect(name).toMatch(/^\p{L}.*\.pdf$/u);
  // As the case is called, not what it is known by.
  expect(name).toContain(title.split(/[^\p{L}\p{N}]+/u)[0] ?? "");
  const text = await pdfText(readFileSync(await download.path()));
  for (const said of [title, "Every shaft stands as foretold"]) expect(text).toContain(said.replaceAll(/\s/g, ""));
  await page.getByText(`${name} is saved.`).waitFor();
  expect(device.faults).toEqual([]);
});

test("without a server the report is read, saved as a page and as the case, and the PDF says why it is not there", async () => {
  const { id } = await at.shop.add("corrected");
  const { page, faults } = await openDevice(at.browser, at.shop.address);
  await page.goto(`/cases/${id}/report`);
  await page.getByRole("heading", { name: "Conclusion" }).waitFor();
  await at.shop.stop();
  try {
    await page.getByRole("button", { name: "Download the PDF" }).click();
    await page.getByText(/cannot be reached\. Print works without it/).waitFor();
    const saved = async (button: string): Promise<string> => {
      const downloading = page.waitForEvent("download");
      await page.getByRole("button", { name: button }).click();
      return readFileSync(await (await downloading).path(), "utf8");
    };
    expect(await saved("Save as a web page")).toContain("<!doctype html>");
    expect(JSON.parse(await saved("Save the case file"))).toMatchObject({ format: "halfturn-case", id });
    await page.getByRole("radio", { name: "Español" }).check({ force: true });
    await page.getByRole("heading", { name: "Conclusión" }).waitFor();
  } finally {
    await at.shop.start();
  }
  expect(faults).toEqual([]);
});

test("a stop finding holds back verdicts and plans until a person takes it on, and that is on record", async () => {
  const { id } = await at.shop.add("three-piece");
  const { page, faults } = await openDevice(at.browser, at.shop.address, { theme: "dark" });
  await page.goto(`/cases/${id}/correct`);
  await page.getByRole("button", { name: "Axle wedges" }).click();
  const refused = page.locator("div", { has: page.getByRole("heading", { name: "No plan can be made yet" }) }).last();
  await refused.waitFor();
  const before = await refused.textContent();
  await held(id, ({ adjusters = [] }) => adjusters.length === 1);

  await page.goto(`/cases/${id}/explain`);
  await page.getByText(/^These are not road angles: put right/).waitFor();
  await page.getByRole("button", { name: "Go on in spite of it …" }).first().click();
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.getByRole("button", { name: "Go on in spite of it", exact: true }).click();
  await expect.poll(() => page.getByText(/^These are not road angles: put right/).count()).toBe(0);
  const { acceptedFindings } = await held(id, (document) => document.acceptedFindings?.length === 1);
  expect(acceptedFindings?.[0]?.code).toMatch(/^gauging\./);

  await page.goto(`/cases/${id}/correct`);
  await page.getByRole("article", { name: "Plan 1" }).or(refused).first().waitFor();
  expect(await refused.count().then((count) => (count === 0 ? "" : refused.textContent()))).not.toBe(before);
  expect(faults).toEqual([]);
});

test("a gloved thumb tilts a shaft's end on a phone by tenths of a degree, and reads beside it how far", async () => {
  const { id } = await at.shop.add("four-wheel-drive");
  const { page, context } = await openDevice(at.browser, at.shop.address, { size: PHONE });
  await page.goto(`/cases/${id}/explain`);
  const end = page.getByRole("slider", { name: /Tilt .*pinion/i }).first();
  await end.evaluate((handle) => handle.scrollIntoView({ block: "center" }));
  const tenths = async () => Number(await end.getAttribute("aria-valuenow"));
  const touch = await context.newCDPSession(page);
  const stroke = async (pixelsUp: number): Promise<void> => {
    const box = await end.locator("circle").first().boundingBox();
    if (!box) throw new Error("no handle");
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const points = Array.from({ length: 11 }, (_, k) => ({ x, y: y - (pixelsUp * k) / 10 }));
    await touch.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: points.slice(0, 1) });
    for (const point of points.slice(1)) await touch.send("Input.dispatchTouchEvent", { type: "touchMove", touchPoints: [point] });
    await touch.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
  };
  await stroke(20);
  await expect.poll(tenths).toBeGreaterThan(5);
  expect(await tenths()).toBeLessThan(15);
  expect(await end.locator("text").textContent()).toBe(await end.getAttribute("aria-valuetext"));
  await stroke(-150);
  await expect.poll(tenths).toBe(-50);
});
