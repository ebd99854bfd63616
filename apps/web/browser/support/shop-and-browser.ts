import type { Browser } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { launch } from "./device.js";
import { openShop, type Shop } from "./shop.js";

/** A shop and a browser for the tests of one file. They are there in its tests and in its own hooks, not before. */
export interface Opened {
  readonly shop: Shop;
  readonly browser: Browser;
}

/** Opens both before the first test of the file that calls this, and closes them after the last. */
export function shopAndBrowser(): Opened {
  let shop: Shop | undefined;
  let browser: Browser | undefined;
  beforeAll(async () => {
    [shop, browser] = await Promise.all([openShop(), launch()]);
  });
  afterAll(async () => {
    await browser?.close();
    await shop?.remove();
  });
  return {
    get shop() {
      return shop as Shop;
    },
    get browser() {
      return browser as Browser;
    },
  };
}
