import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { openDevice, PHONE } from "./support/device.js";
import { pdfPages } from "./support/pdf-text.js";
import { shopAndBrowser } from "./support/shop-and-browser.js";

const at = shopAndBrowser();

test("a report that is printed from a phone has figures as wide as paper, and the screen its own again afterwards", async () => {
  const { id } = await at.shop.add("one-piece");
  const { page } = await openDevice(at.browser, at.shop.address, { size: PHONE });
  await page.goto(`/cases/${id}/report`);
  await page.locator("figure svg").first().waitFor();
  const widths = (): readonly number[] =>
    [...document.querySelectorAll<SVGSVGElement>("figure svg")].map((svg) => svg.viewBox.baseVal.width);
  const onScreen = await page.evaluate(widths);
  expect(onScreen.filter((width) => width > PHONE.width)).toEqual([]);
  await page.evaluate(`window.addEventListener("beforeprint", () => { window.printed = (${widths})(); })`);
  await page.pdf({ format: "A4" });
  const printed = await page.evaluate<readonly number[]>("window.printed");
  expect(printed).toHaveLength(onScreen.length);
  expect(printed.filter((width) => width < 600)).toEqual([]);
  await expect.poll(() => page.evaluate(widths)).toEqual(onScreen);
});

/** Pages begin elsewhere by so much each time, so that tables meet their feet in many ways. */
const LOWER_PX = [0, 45, 90, 135, 180, 225];

interface Stranded {
  readonly tables: number;
  /** Captions on another page than the first row below them. */
  readonly apart: readonly string[];
}

async function strandedOn(page: Page): Promise<Stranded> {
  const tables = await page.evaluate(() =>
    [...document.querySelectorAll("table")].map(({ caption, tBodies: [body] }) =>
      [caption, body?.rows[0]?.cells[0]].map((cell) => (cell?.textContent ?? "").replaceAll(/\s/g, "")),
    ),
  );
  const apart: string[] = [];
  for (const px of LOWER_PX) {
    await page.evaluate((height) => {
      document.body.style.paddingTop = `${height}px`;
    }, px);
    const pages = await pdfPages(await page.pdf({ format: "A4" }));
    for (const [caption = "", first = ""] of tables)
      if (!pages.some((text) => text.includes(first, text.indexOf(caption) + 1 || text.length))) apart.push(`${caption}, ${px} px lower`);
  }
  return { tables: tables.length, apart };
}

test("no table's caption and head stand alone at the foot of a printed page, nor of the saved one", async () => {
  const { id } = await at.shop.add("two-piece");
  const { page, context } = await openDevice(at.browser, at.shop.address);
  await page.goto(`/cases/${id}/report`);
  await page.locator("figure svg").first().waitFor();
  const printed = await strandedOn(page);
  expect(printed.tables).toBeGreaterThan(5);
  expect(printed.apart).toEqual([]);

  const downloading = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save as a web page" }).click();
  const saved = await context.newPage();
  await saved.setContent(readFileSync(await (await downloading).path(), "utf8"));
  const kept = await strandedOn(saved);
  expect(kept.tables).toBeGreaterThan(5);
  expect(kept.apart).toEqual([]);
});
