import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { DESK, openDevice, PHONE } from "./support/device.js";
import { shopAndBrowser } from "./support/shop-and-browser.js";

const at = shopAndBrowser();

async function drawings(settings: Parameters<typeof openDevice>[2], id: string): Promise<readonly string[]> {
  const { page, context } = await openDevice(at.browser, at.shop.address, settings);
  await page.goto(`/cases/${id}/report`);
  await page.locator("figure svg").nth(3).waitFor();
  const markup = await page.locator("figure svg").evaluateAll((all) => all.map((svg) => svg.outerHTML));
  await context.close();
  return markup;
}

/** The module as a script on an empty page, beside a place to draw in. */
async function place(page: Page): Promise<void> {
  const entry = fileURLToPath(new URL("../src/controls/redraw.ts", import.meta.url));
  const { outputFiles } = await build({ entryPoints: [entry], bundle: true, write: false, format: "iife", globalName: "drawn" });
  await page.setContent("<div></div>");
  await page.addScriptTag({ content: outputFiles[0]?.text ?? "" });
}

/** Draws one over the other: whether what then stands there is the other, but for the order of attributes, and whether the drawing itself was kept. */
const over = (page: Page, [first, second]: readonly [string, string]) =>
  page.evaluate(
    ([first, second]) => {
      const { drawn } = globalThis as unknown as { drawn: { redraw: (place: Element, markup: string) => void } };
      const shown = document.querySelector("div") as Element;
      drawn.redraw(shown, first);
      const before = shown.firstElementChild;
      drawn.redraw(shown, second);
      const wanted = document.createElement("div");
      wanted.innerHTML = second;
      return { same: shown.isEqualNode(wanted), kept: before === shown.firstElementChild };
    },
    [first, second] as const,
  );

test("a drawing over another is the one that was asked for, whatever stood there", async () => {
  const { id } = await at.shop.add("two-piece");
  const all = [
    ...(await drawings({ size: DESK }, id)),
    ...(await drawings({ size: PHONE, language: "es", units: "us", theme: "dark" }, id)),
  ];
  expect(all.length).toBeGreaterThan(8);
  const { page } = await openDevice(at.browser, at.shop.address);
  await page.goto("about:blank");
  await place(page);
  for (const first of all) for (const second of all) expect(await over(page, [first, second])).toEqual({ same: true, kept: true });
});

test("what is no longer drawn goes, with its attributes, and nothing is left of an empty one", async () => {
  const { page } = await openDevice(at.browser, at.shop.address);
  await page.goto("about:blank");
  await place(page);
  const [few, many] = [
    '<svg><g>a<path d="M 0 0"></path></g></svg>',
    '<svg width="1"><rect></rect><g fill="red"><text>b</text>c</g><g></g></svg>',
  ];
  expect(await over(page, [many, few])).toEqual({ same: true, kept: true });
  expect(await over(page, [few, many])).toEqual({ same: true, kept: true });
  expect(await over(page, [many, ""])).toEqual({ same: true, kept: false });
});
