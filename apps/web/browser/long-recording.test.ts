import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Case } from "@halfturn/casefile";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { DESK, type Device, openOnDisk } from "./support/device.js";
import { LONG_PER_TURN, writeLongWav } from "./support/long-wav.js";
import { privateFiles } from "./support/private-files.js";
import { openShop, type Shop } from "./support/shop.js";

/** 1.02 million samples; up to a million are in memory anyway. */
const SECONDS = 250;
/** Enough for a case, and for nothing of the recording. */
const SCANT_BYTES = 1_000_000;

/** It is listened to twice, some ten seconds each on a machine that has nothing else to do. */
const BOTH_MS = 180_000;

let shop: Shop;
let document: Case;
let folder: string;
let path: string;
const devices: Device[] = [];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "halfturn-long-"));
  path = join(folder, "long.wav");
  writeLongWav(path, SECONDS);
  shop = await openShop();
  document = await shop.add("two-piece");
});
afterAll(async () => {
  for (const { context } of devices) await context.close();
  await shop?.remove();
  rmSync(folder, { recursive: true, force: true });
});

async function device(): Promise<Device> {
  const made = await openOnDisk(join(folder, `device-${devices.length}`), shop.address, { size: DESK });
  devices.push(made);
  return made;
}

async function open(page: Page): Promise<void> {
  await page.goto(`/cases/${document.id}/record`);
  await page.locator("input[type=file]").setInputFiles(path);
  await page.getByText("4096 samples per second").waitFor();
}

/** Files of what is open; what was kept in the case lies on a shelf of its own. */
const listenedTo = async (page: Page): Promise<readonly string[]> =>
  (await privateFiles(page)).filter((path) => path.startsWith("listening/"));

/** Folders that some tab has at work. */
const held = (page: Page): Promise<number> =>
  page.evaluate(
    async () => (await navigator.locks.query()).held?.filter(({ name }) => name?.startsWith("halfturn-listening-")).length ?? 0,
  );

/** What the page says of the part once it was listened to, and every amplitude beside it. */
async function heard(page: Page): Promise<string> {
  await page.getByText("channel_2 as tachometer").click();
  await page.getByLabel("Pulses per turn").fill(String(LONG_PER_TURN));
  await page
    .locator("section", { has: page.getByRole("heading", { name: "long.wav" }) })
    .getByText("5", { exact: true })
    .click();
  await page.getByRole("button", { name: "Name the part" }).click();
  await page.getByRole("heading", { name: "By order and time" }).waitFor({ timeout: BOTH_MS / 2 });
  await page
    .getByRole("button", { name: /^\d+\.\d\sHz, / })
    .first()
    .waitFor();
  return (await page.locator("main").textContent()) ?? "";
}

test("a long recording is heard from private files as from memory, and nothing of it stays on the device", {
  timeout: BOTH_MS,
}, async () => {
  const inFiles = await device();
  await open(inFiles.page);
  expect(await privateFiles(inFiles.page)).toEqual([expect.stringMatching(/^listening\//), expect.stringMatching(/^listening\//)]);
  expect(await inFiles.page.getByText("held in memory").count()).toBe(0);
  const fromFiles = await heard(inFiles.page);

  const scant = await device();
  await scant.page.goto("/cases");
  const session = await scant.context.newCDPSession(scant.page);
  await session.send("Storage.overrideQuotaForOrigin", { origin: shop.address, quotaSize: SCANT_BYTES });
  await open(scant.page);
  const why = scant.page.getByText(/There is no room on this device to put the samples aside: they are held in memory, 60,000,000 at most/);
  await why.waitFor();
  expect(await privateFiles(scant.page)).toEqual([]);
  const said = (await why.textContent()) ?? "";
  expect((await heard(scant.page)).replace(said, "")).toBe(fromFiles);

  // The tachometer that was chosen is one from now on.
  await inFiles.page.getByRole("button", { name: "Keep in the case" }).click();
  await expect
    .poll(async () => (await shop.read(document.id)).recordings, { timeout: 5000 })
    .toMatchObject([{ file: "long.wav", channels: [{ id: "channel_2", name: "tacho_propeller_shaft" }], pulsesPerTurn: LONG_PER_TURN }]);
  expect(fromFiles).toContain("The propeller shaft's first order");

  // Another page of the app: the recording is no longer open.
  await inFiles.page.getByRole("link", { name: "Gauge" }).first().click();
  await expect.poll(() => listenedTo(inFiles.page), { timeout: 5000 }).toEqual([]);
  expect([...inFiles.faults, ...scant.faults]).toEqual([]);
});

test("what a tab left that was closed over its work is swept at the next start", async () => {
  const { page, context } = await device();
  await open(page);
  const other = await context.newPage();
  await other.goto("/cases");
  // What is at work is let be.
  const atWork = await privateFiles(other);
  expect(atWork.length).toBeGreaterThan(0);
  await page.close();
  // The worker of a closed tab dies a moment later; until then its folder is at work.
  await expect.poll(() => held(other), { timeout: 10_000 }).toBe(0);
  expect(await privateFiles(other)).toEqual(atWork);
  await other.reload();
  await expect.poll(() => privateFiles(other), { timeout: 10_000 }).toEqual([]);
});
