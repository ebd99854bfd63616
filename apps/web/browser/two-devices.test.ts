import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { DESK, openDevice } from "./support/device.js";
import { shopAndBrowser } from "./support/shop-and-browser.js";

const at = shopAndBrowser();

/** As the server and the design promise. */
const LIVE_MS = 2000;

const titleField = (page: Page) => page.getByLabel("In one line");
const vehicleField = (page: Page) => page.getByLabel("Vehicle", { exact: true });

async function twoDevices(example: string) {
  const { id } = await at.shop.add(example);
  const [phone, desk] = await Promise.all([
    openDevice(at.browser, at.shop.address),
    openDevice(at.browser, at.shop.address, { size: DESK }),
  ]);
  for (const { page } of [phone, desk]) {
    await page.goto(`/cases/${id}/describe`);
    await titleField(page).waitFor();
  }
  // Both listen before the first change.
  await Promise.all([phone, desk].map(({ page }) => page.waitForTimeout(500)));
  return { id, phone, desk };
}

const shows = (page: Page, field: "title" | "vehicle", value: string, timeout = 15_000) =>
  (field === "title" ? titleField : vehicleField)(page)
    .and(page.locator(`[value=${JSON.stringify(value)}]`))
    .waitFor({ timeout });

test("what one device changes, the other shows within two seconds, and both edits stand", async () => {
  const { id, phone, desk } = await twoDevices("two-piece");
  await titleField(phone.page).fill("Changed on the phone");
  const typed = performance.now();
  await shows(desk.page, "title", "Changed on the phone");
  expect(performance.now() - typed).toBeLessThan(LIVE_MS);
  await vehicleField(desk.page).fill("Changed at the desk");
  await shows(phone.page, "vehicle", "Changed at the desk", LIVE_MS);
  expect(await at.shop.read(id)).toMatchObject({ title: "Changed on the phone", vehicle: { label: "Changed at the desk" } });
  expect([...phone.faults, ...desk.faults]).toEqual([]);
});

test("where both changed one field, a sheet shows both, and the choice is the case on both devices", async () => {
  const { id, phone, desk } = await twoDevices("one-piece");
  await phone.context.setOffline(true);
  await titleField(phone.page).fill("Said under the vehicle");
  await titleField(desk.page).fill("Said at the desk");
  await desk.page.waitForTimeout(1500);
  await phone.context.setOffline(false);
  await phone.page.getByText("One field was changed here and on another device.").waitFor();
  expect((await at.shop.read(id)).title).toBe("Said at the desk");
  await phone.page.getByRole("button", { name: "Choose" }).click();
  const sheet = phone.page.getByRole("dialog");
  await sheet.getByText("Said at the desk").waitFor();
  await sheet.getByRole("button", { name: /Said under the vehicle/ }).click();
  await shows(desk.page, "title", "Said under the vehicle");
  expect((await at.shop.read(id)).title).toBe("Said under the vehicle");
  expect(await phone.page.getByRole("dialog").count()).toBe(0);
});

test("a shaft that one device builds otherwise while the other measures it is asked about as a whole", async () => {
  const { page: phone, context, faults } = await openDevice(at.browser, at.shop.address);
  await phone.goto("/cases/new");
  await phone.getByRole("button", { name: "One-piece" }).click();
  await phone.waitForURL("**/describe");
  const id = new URL(phone.url()).pathname.split("/")[2] ?? "";
  const lengths = async () => (await at.shop.read(id)).drivelines?.[0]?.sections.map(({ id: name, lengthMm }) => [name, lengthMm]);
  await expect.poll(lengths, { timeout: 5000 }).toEqual([["shaft", undefined]]);
  const { page: desk } = await openDevice(at.browser, at.shop.address, { size: DESK });
  await desk.goto(`/cases/${id}/describe`);
  await desk.getByLabel("Length, joint centre to joint centre").waitFor();
  await context.setOffline(true);
  await phone.getByText("How it is put together").click();
  await phone.getByText("In two pieces").click();
  await desk.getByLabel("Length, joint centre to joint centre").fill("1500");
  await expect.poll(lengths, { timeout: 5000 }).toEqual([["shaft", 1500]]);
  await context.setOffline(false);
  await phone.getByRole("button", { name: "Choose" }).click();
  const sheet = phone.getByRole("dialog");
  await sheet.getByRole("heading", { name: "Driveline rear" }).waitFor();
  expect(await sheet.getByRole("button", { name: /This device/ }).textContent()).toMatch(/Section front.*Section back/s);
  await sheet.getByRole("button", { name: /Section shaft: .*joint centre to joint centre: 1.?500/ }).click();
  await phone.getByRole("heading", { name: "Section shaft" }).waitFor();
  await expect.poll(lengths, { timeout: 5000 }).toEqual([["shaft", 1500]]);
  expect(faults).toEqual([]);
});
