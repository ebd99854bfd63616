// Pictures of every page with the invented cases of an empty shop. `npm run screens`, with a word: only what has it in its name.
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { launch, openDevice } from "../support/device.js";
import { show } from "../support/pages.js";
import { openShop } from "../support/shop.js";
import { capture } from "./capture.js";
import { SHOTS } from "./shots.js";

/** Larger ones make the first page of the repository slow to open. */
const MOST_BYTES = 150_000;

/** A little room above a heading makes it look like the beginning that it is. */
const ROOM_ABOVE = 16;

async function bringUp(page: Page, text: string): Promise<void> {
  const main = page.locator("main");
  await main
    .getByText(text)
    .first()
    .evaluate((element) => element.scrollIntoView());
  await main.evaluate((element, room) => element.scrollBy(0, -room), ROOM_ABOVE);
}

const [folder = "docs/screens", wanted = ""] = process.argv.slice(2);
mkdirSync(folder, { recursive: true });
const common = await openShop({ demo: true });
const browser = await launch();
try {
  for (const { name, path, settings, press = [], from } of SHOTS.filter((shot) => shot.name.includes(wanted))) {
    // What is pressed changes a case: the next picture is of one that nobody touched.
    const shop = press.length > 0 ? await openShop({ demo: true }) : common;
    const { page, context, faults } = await openDevice(browser, shop.address, settings);
    // Whoever opens the shop for the first time gets its cases within a moment; pictures are taken after that.
    await show(page, "/cases");
    // Cautions stand open the first time; pictures show a page as it is met from then on.
    await show(page, path);
    await show(page, path);
    // What is still being worked out says so; the picture is of what was found.
    await page.locator('main progress, main [role="status"]:has-text("…")').first().waitFor({ state: "detached" });
    for (const text of press) await page.locator("main").getByText(text, { exact: true }).first().click();
    if (from !== undefined) await bringUp(page, from);
    const picture = await capture(page);
    writeFileSync(join(folder, `${name}.webp`), picture);
    if (faults.length > 0 || picture.length > MOST_BYTES) process.exitCode = 1;
    console.log([`${name}.webp`, `${Math.round(picture.length / 1000)} kB`, ...faults].join("  "));
    await context.close();
    if (shop !== common) await shop.remove();
  }
} finally {
  await browser.close();
  await common.remove();
}
