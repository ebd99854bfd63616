import { type CaseGauging, newCase } from "@halfturn/casefile";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { type DeviceSettings, openDevice } from "./support/device.js";
import { shopAndBrowser } from "./support/shop-and-browser.js";

const at = shopAndBrowser();

const button = (page: Page, name: string | RegExp) => page.getByRole("button", { name, exact: typeof name === "string" });

const place = (page: Page, name: string) => page.getByRole("navigation", { name: "Places" }).getByRole("button", { name });

/** A gauging of a new one-piece driveline, begun on a device. */
async function begun(id: string, settings: DeviceSettings = {}) {
  const document = newCase({ id, title: id, layout: "one-piece", createdAt: "2026-05-04T07:30:00Z" });
  const body = JSON.stringify({ ...document, drivelines: [{ ...document.drivelines[0], sections: [{ id: "shaft", lengthMm: 1180 }] }] });
  const answer = await fetch(`${at.shop.address}/api/cases`, { method: "POST", body, headers: { "content-type": "application/json" } });
  expect(answer.ok).toBe(true);
  const device = await openDevice(at.browser, at.shop.address, settings);
  await device.page.goto(`/cases/${id}/gauge`);
  await device.page.getByText("On the ground", { exact: true }).tap();
  return device;
}

const gaugingIs = (id: string, of: (gauging: CaseGauging | undefined) => unknown) =>
  expect.poll(async () => of((await at.shop.read(id)).gauging?.[0]), { timeout: 5000 });

async function keep(page: Page, number: string, end: string): Promise<void> {
  await page.keyboard.type(number);
  await button(page, new RegExp(`^.?${end}`))
    .last()
    .tap();
}

test("a place read again is a repeat; a reading is changed in its place, noted beside, deleted, and brought back", async () => {
  const { page } = await begun("repeats");
  await button(page, "Start reading").tap();
  await keep(page, "2.4", "Top leans to the rear");
  await place(page, "Source").tap();
  await page.getByText("Lift the gauge off between repeats.").waitFor();
  await keep(page, "2.5", "Top leans to the rear");
  const degrees = (gauging: CaseGauging | undefined) => gauging?.readings.map(({ deg }) => deg);
  await gaugingIs("repeats", degrees).toEqual([2.4, 2.5]);

  await place(page, "Source").tap();
  await button(page, "Note: 2.5°, top leans to the rear").tap();
  await page.getByLabel("Note", { exact: true }).fill("rust under the magnet");
  await button(page, "Change: 2.5°, top leans to the rear").tap();
  await page.getByText("Instead of 2.5°").waitFor();
  await keep(page, "2.3", "Top leans to the front");
  await gaugingIs("repeats", (gauging) => gauging?.readings[1]).toEqual({
    at: "source",
    face: "square",
    deg: 2.3,
    topLeans: "source-end",
    side: "left",
    notes: "rust under the magnet",
  });

  await place(page, "Source").tap();
  await button(page, "Delete: 2.4°, top leans to the rear").tap();
  await gaugingIs("repeats", degrees).toEqual([2.3]);
  await button(page, "Undo").tap();
  await gaugingIs("repeats", degrees).toEqual([2.4, 2.3]);
});

test("shafts are read against one another with the gauge zeroed, and the joint between them shows", async () => {
  const { page } = await begun("zeroed");
  await button(page, "Start reading").tap();
  await page.getByText("Shaft to shaft", { exact: true }).tap();
  await keep(page, "2.6", "Rear end lower");
  await gaugingIs("zeroed", (gauging) => gauging?.readings).toEqual([
    { between: ["source", "shaft"], deg: 2.6, lower: "driven-end", side: "left" },
  ]);
  await page.getByRole("listitem").filter({ hasText: "2.60°" }).first().waitFor();
});

test("a heading by tape in inches, over the section's own length, lands in millimetres", async () => {
  const { page } = await begun("tape", { units: "us" });
  await button(page, "Start reading").tap();
  await page.getByText("By tape", { exact: true }).tap();
  await place(page, "Section shaft").tap();
  for (const key of ["1", "/", "2"]) await button(page, key).tap();
  await button(page, /Toward the right/).tap();
  await gaugingIs("tape", (gauging) => gauging?.headings).toEqual([{ of: "shaft", lateralMm: 12.7, toward: "right", overMm: 1180 }]);
});

test("the turn-round check shows the zero that it found, and keeps both readings", async () => {
  const { page } = await begun("zero");
  await page.getByText(/^Gauge:/).tap();
  await button(page, "Check the zero").tap();
  await page.keyboard.type("0.4");
  await button(page, /Right of display lower/).tap();
  await page.getByText("Turned round, same spot").waitFor();
  await page.keyboard.type("0.2");
  await button(page, /Left of display lower/).tap();
  await page.getByText("Zero found: 0.10°").waitFor();
  await button(page, "Start reading").tap();
  await gaugingIs("zero", (gauging) => gauging?.gauge.zeroCheck).toEqual([
    { deg: 0.4, lower: "display-right" },
    { deg: 0.2, lower: "display-left" },
  ]);
});

test("a phone that lies still against a face is taken as the reading, with the end that it found lower", async () => {
  const { page, context } = await begun("phone");
  await page.getByText(/^Gauge:/).tap();
  await page.getByText("This phone", { exact: true }).tap();
  await button(page, "Start reading").tap();
  await button(page, "Allow the tilt sensor").tap();
  const sensor = await context.newCDPSession(page);
  const hold = (beta: number, gamma: number) => sensor.send("DeviceOrientation.setDeviceOrientationOverride", { alpha: 0, beta, gamma });
  await hold(0, 0);
  await page.getByText("The phone is lying.").waitFor();
  // Upright with its right edge 2.4 degrees down, which is the rear for who stands on the left.
  await hold(92.4, -90);
  await page.getByText("still", { exact: true }).waitFor();
  await button(page, "Take this reading").tap();
  await gaugingIs("phone", (gauging) => gauging?.readings).toEqual([
    { at: "source", face: "square", deg: 2.4, topLeans: "driven-end", side: "left" },
  ]);
});
