import { readFileSync } from "node:fs";
import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { openDevice, PHONE } from "./support/device.js";
import { pdfText } from "./support/pdf-text.js";
import { shopAndBrowser } from "./support/shop-and-browser.js";

const at = shopAndBrowser();

/** The whole job, a tap as one and what is entered into one field as one. */
const MOST_ACTIONS = 60;

/** A person with a phone: every action counted, and nothing but what the screen shows. */
function personAt(page: Page) {
  let actions = 0;
  const button = (name: string | RegExp): Locator => page.getByRole("button", { name, exact: typeof name === "string" });
  const tap = async (what: Locator): Promise<void> => {
    actions++;
    await what.tap();
  };
  const fill = async (label: string | RegExp, text: string, nth = 0): Promise<void> => {
    actions++;
    const field = page.getByLabel(label).nth(nth);
    await field.fill(text);
    await field.blur();
  };
  const number = async (text: string): Promise<void> => {
    actions++;
    for (const sign of text) await button(sign === "." ? "Decimal point" : sign).tap();
  };
  const step = (name: string): Promise<void> =>
    tap(page.getByRole("navigation", { name: "Steps" }).getByRole("link", { name: new RegExp(`^${name}`) }));
  return { button, tap, fill, number, step, actions: () => actions };
}

type Person = ReturnType<typeof personAt>;

async function read(page: Page, person: Person, number: string, end: string): Promise<void> {
  await person.number(number);
  await person.tap(page.getByRole("group", { name: /lower|lean/ }).getByRole("button", { name: end }));
}

const FACE = "Top leans to the rear";
const TUBE = "Rear end lower";

async function described(page: Page, person: Person): Promise<void> {
  await person.tap(page.getByRole("link", { name: /New case/ }));
  await person.tap(person.button(/^Two-piece/));
  await person.fill("In one line", "Hums at ninety");
  await person.fill(/Road speed: From/, "85");
  await person.fill(/Road speed: To/, "95");
  for (const [k, length] of ["1180", "1310"].entries()) await person.fill(/^Length, joint centre/, length, k);
}

async function gaugedAsFound(page: Page, person: Person): Promise<void> {
  await person.step("Gauge");
  await person.tap(page.getByText("On a drive-on lift", { exact: true }));
  await person.tap(person.button("Start reading"));
  await read(page, person, "1.0", FACE);
  await read(page, person, "4.0", TUBE);
  await read(page, person, "5.0", TUBE);
  const alert = page.getByRole("alert").filter({ hasText: "The two ends of one tube disagree" });
  await person.tap(alert.getByRole("button", { name: /Read again: .* near its rear end/ }));
  await person.number("4.0");
  await person.tap(person.button("Keep"));
  for (const [number, end] of [
    ["6.0", TUBE],
    ["6.0", TUBE],
    ["1.0", FACE],
  ] as const)
    await read(page, person, number, end);
  for (const section of ["Section front", "Section back"])
    await person.tap(page.getByRole("radiogroup", { name: section }).getByText("In line", { exact: true }));
}

async function corrected(page: Page, person: Person): Promise<void> {
  await person.tap(page.getByRole("link", { name: "Go on to Explain" }));
  await person.step("Correct");
  await person.tap(person.button("Put the usual parts in"));
  const plan = page
    .getByRole("article")
    .filter({ has: person.button("Choose this plan") })
    .first();
  await person.tap(plan.getByRole("button", { name: "Choose this plan" }));
  await person.tap(person.button("Mark as made"));
}

const idOf = (page: Page): string => new URL(page.url()).pathname.split("/")[2] ?? "";

/** What a gauge would show if every shaft now stood where it was foretold. */
async function foretold(id: string): Promise<ReadonlyMap<string, number>> {
  for (let tries = 0; tries < 40; tries++) {
    const last = (await at.shop.read(id)).corrections?.at(-1);
    const shafts = last?.state === "made" ? last.predicted[0]?.drivelines[0]?.shafts : undefined;
    if (shafts) return new Map(shafts.map((shaft) => [shaft.id, shaft.inclinationDeg?.value ?? Number.NaN]));
    await new Promise((resolve) => setTimeout(resolve, 250));
  }
  throw new Error("the correction never reached the server");
}

async function gaugedAfter(page: Page, person: Person): Promise<void> {
  const angles = await foretold(idOf(page));
  await person.tap(page.getByRole("link", { name: /Gauge again|Gauge/ }).first());
  await person.tap(person.button("Start reading"));
  for (const shaft of ["source", "front", "front", "back", "back", "driven"]) {
    const angle = angles.get(shaft) ?? Number.NaN;
    const isFace = shaft === "source" || shaft === "driven";
    await read(
      page,
      person,
      Math.abs(angle).toFixed(1),
      angle >= 0 ? (isFace ? FACE : TUBE) : isFace ? "Top leans to the front" : "Front end lower",
    );
  }
}

test("from the complaint to the proved report, by touch on a phone", async () => {
  const { page, faults } = await openDevice(at.browser, at.shop.address, { size: PHONE });
  page.setDefaultTimeout(15_000);
  const person = personAt(page);
  await page.goto("/cases");
  await described(page, person);
  await gaugedAsFound(page, person);
  await corrected(page, person);
  await gaugedAfter(page, person);
  await person.tap(page.getByRole("link", { name: "Go on to Prove" }));
  await page.getByText("Every shaft stands as foretold, within the uncertainty of both.").first().waitFor();
  await person.step("Report");
  const downloading = page.waitForEvent("download");
  await person.tap(person.button("Download the PDF"));
  const text = await pdfText(readFileSync(await (await downloading).path()));
  for (const said of ["Hums at ninety", "Every shaft stands as foretold"]) expect(text).toContain(said.replaceAll(/\s/g, ""));
  expect(person.actions()).toBeLessThanOrEqual(MOST_ACTIONS);
  expect(faults).toEqual([]);
}, 120_000);
