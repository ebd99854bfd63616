import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { accessibilityFaults, clippedTexts, pseudoTranslate } from "./support/check-page.js";
import { DESK, openDevice, PHONE, THEMES } from "./support/device.js";
import { shopAndBrowser } from "./support/shop-and-browser.js";

const at = shopAndBrowser();
let id: string;
/** Of a van that has no loads of its own. */
let plain: string;

beforeAll(async () => {
  ({ id } = await at.shop.add("four-wheel-drive"));
  ({ id: plain } = await at.shop.add("three-piece"));
});

/** The card of a driveline, or another one, by its heading. */
const card = (page: Page, title: string) => page.locator("main section").filter({ has: page.locator("h2", { hasText: title }) });
const fold = (page: Page, within: string, title: string) =>
  card(page, within)
    .locator("details")
    .filter({ has: page.locator("> summary").and(page.getByText(title, { exact: true })) })
    .last();

async function opened(page: Page, within: string, title: string) {
  const found = fold(page, within, title);
  await found.locator("> summary").click();
  return found;
}

const kept = (look: () => Promise<unknown>) => expect.poll(look, { timeout: 5000 });

test("everything a case can say of a vehicle can be typed, and goes into the case as it is meant", async () => {
  const { page, faults } = await openDevice(at.browser, at.shop.address, { size: DESK });
  await page.goto(`/cases/${id}/describe`);
  const front = async () => (await at.shop.read(id)).drivelines[1];

  const axle = await opened(page, "Driveline front", "Axle");
  await axle.getByLabel("Lean of the spring pad", { exact: true }).fill("1.5");
  await page.getByText("Choose which way").waitFor();
  // On a shaft that runs forward the edge toward the pinion is the front one.
  await axle.getByText("Front edge lower").click();
  await kept(async () => (await front())?.axle?.padInclinationDeg).toBe(1.5);
  const guides = await opened(page, "Driveline front", "What guides the axle");
  await guides.getByText("Leaf springs").click();
  // The links stand until the springs are measured.
  expect((await front())?.axle?.suspension?.kind).toBe("links");
  await guides.getByLabel("Fixed eye, forward of the axle centre").fill("650");
  await guides.getByLabel("Fixed eye, above the axle centre").fill("-40");
  await kept(async () => (await front())?.axle?.suspension).toEqual({ kind: "leaf", fixedEyeForwardMm: 650, fixedEyeUpMm: -40 });
  await guides.getByLabel("Eye at the shackle").fill("-600");
  await kept(async () => (await front())?.axle?.suspension).toMatchObject({ kind: "leaf", shackleEyeForwardMm: -600 });

  const first = await opened(page, "Driveline front", "Where its first joint lies");
  await first.getByLabel("Forward of it").fill("320");
  await kept(async () => (await front())?.firstJoint).toEqual({ forwardMm: 320, leftMm: 210, upMm: -30 });

  const numbers = "Numbers of the vehicle";
  const gears = await opened(page, numbers, "Gears and slip");
  await gears.getByLabel("Most slip of converter or clutch").fill("4");
  await kept(async () => (await at.shop.read(id)).vehicle?.slipShare).toBe(0.04);
  const driven = await opened(page, numbers, "What the engine drives");
  await driven.getByRole("button", { name: "Add an accessory" }).click();
  await driven.getByLabel("What it is").fill("Cooling fan");
  await driven.getByLabel("Ratio").fill("1.12");
  await kept(async () => (await at.shop.read(id)).vehicle?.accessories).toEqual([{ id: "accessory-1", label: "Cooling fan", ratio: 1.12 }]);

  const more = "More, where it is needed";
  const states = await opened(page, more, "Loads and ride heights");
  await states.getByRole("button", { name: "Add a load or ride height" }).click();
  const state = states.locator("details[open]").last();
  await state.getByLabel("What it is called").fill("Two crates in the back");
  await state.getByText("Body lower").click();
  await state.getByLabel("Body against as gauged", { exact: true }).fill("35");
  await kept(async () => (await at.shop.read(id)).states?.at(-1)).toEqual({
    id: "state-2",
    label: "Two crates in the back",
    axleTravelMm: -35,
  });

  const limits = await opened(page, more, "Limits");
  await limits.getByLabel("Cross joint, largest angle", { exact: true }).fill("0.4");
  await page.getByText("Cross joint, largest angle: it has to be at least 0.5° and less than 90°.").waitFor();
  await limits.getByLabel("Cross joint, largest angle", { exact: true }).fill("7");
  await limits.getByLabel("Equivalent angle").fill("");
  await kept(async () => (await at.shop.read(id)).limits).toEqual({ source: "Shop rule of Skerry Harbour Works", crossMaximumDeg: 7 });
  expect(faults).toEqual([]);
});

test("the first load brings the vehicle as it was gauged along, and the last one takes it away", async () => {
  const { page } = await openDevice(at.browser, at.shop.address, { size: DESK });
  await page.goto(`/cases/${plain}/describe`);
  const ids = async () => (await at.shop.read(plain)).states?.map((state) => state.id);
  const states = await opened(page, "More, where it is needed", "Loads and ride heights");
  await states.getByRole("button", { name: "Add a load or ride height" }).click();
  await kept(ids).toEqual(["normal", "state-1"]);
  await states.getByRole("button", { name: "Take out State 1" }).click();
  await kept(ids).toBeUndefined();
});

test("a gear is renamed by way of a name that another has", async () => {
  const { page } = await openDevice(at.browser, at.shop.address, { size: DESK });
  await page.goto(`/cases/${id}/describe`);
  const gears = await opened(page, "Numbers of the vehicle", "Gears and slip");
  const second = gears.getByLabel("Gear", { exact: true }).nth(1);
  await second.fill("1");
  await page.getByText("Another one is called 1 already").waitFor();
  await second.press("End");
  await second.press("0");
  await kept(async () => (await at.shop.read(id)).vehicle?.gears?.[1]?.label).toBe("10");
});

test("an angle of phasing that passes through a right angle is typed to its end", async () => {
  const { page } = await openDevice(at.browser, at.shop.address, { size: DESK });
  await page.goto(`/cases/${id}/describe`);
  await card(page, "Driveline rear").getByText("Another angle").click();
  const angle = page.getByLabel("Driven-end yoke, clockwise seen from the source end");
  await angle.pressSequentially("90.5");
  await kept(async () => (await at.shop.read(id)).drivelines[0]?.sections[0]?.phasingDeg).toBe(90.5);
});

test("a vehicle is built otherwise than its case was begun", async () => {
  const { page, faults } = await openDevice(at.browser, at.shop.address, { size: PHONE });
  await page.goto("/cases/new");
  await page.getByRole("button", { name: "One-piece" }).click();
  await page.waitForURL("**/describe");
  const begun = new URL(page.url()).pathname.split("/")[2] ?? "";
  const drivelines = async () =>
    (await at.shop.read(begun)).drivelines.map(({ id: name, sections, joints }) => [
      name,
      sections.length,
      joints.map((joint) => joint.id).join(),
    ]);
  const put = await opened(page, "Driveline rear", "How it is put together");
  await put.getByText("In three pieces").click();
  await kept(drivelines).toEqual([["rear", 3, "J1,J2,J3,J4"]]);
  await card(page, "Driveline rear").getByRole("heading", { name: "Section middle" }).waitFor();

  await page.getByRole("button", { name: "Add a driveline to the front axle" }).click();
  await kept(drivelines).toEqual([
    ["rear", 3, "J1,J2,J3,J4"],
    ["front", 1, "J1,J2"],
  ]);
  const front = await opened(page, "Driveline front", "How it is put together");
  await front.getByRole("button", { name: "Take out Driveline front" }).click();
  await kept(drivelines).toEqual([["rear", 3, "J1,J2,J3,J4"]]);
  await page.getByRole("button", { name: "Undo" }).click();
  await card(page, "Driveline front").waitFor();
  expect(faults).toEqual([]);
});

test("a shaft whose parts are named by readings stays as it is, and says why", async () => {
  const { page } = await openDevice(at.browser, at.shop.address, { size: PHONE });
  await page.goto(`/cases/${plain}/describe`);
  const put = await opened(page, "Driveline rear", "How it is put together");
  await put.getByText("In three pieces. Readings, adjusters or corrections name its parts").waitFor();
  expect(await put.getByRole("radio").count()).toBe(0);
});

const openAll = (page: Page) =>
  page.evaluate(() => {
    for (const details of document.querySelectorAll("main details")) details.setAttribute("open", "");
  });

test.each(["en", "es"] as const)(
  "with everything unfolded no rule of accessibility is broken and no word is cut off, in %s",
  async (language) => {
    for (const size of [PHONE, DESK]) {
      const { page, context, faults } = await openDevice(at.browser, at.shop.address, { size, language });
      await page.goto(`/cases/${id}/describe`);
      await page.locator("main h2").first().waitFor();
      await openAll(page);
      await page.waitForTimeout(500);
      for (const theme of THEMES) {
        await page.evaluate((name) => document.documentElement.setAttribute("data-theme", name), theme);
        expect(await accessibilityFaults(page), theme).toEqual([]);
      }
      expect(await clippedTexts(page)).toEqual([]);
      if (size === PHONE && language === "en") {
        await pseudoTranslate(page);
        expect(await clippedTexts(page)).toEqual([]);
      }
      expect(faults).toEqual([]);
      await context.close();
    }
  },
);
