import { gzipSync } from "node:zlib";
import type { Page } from "playwright-core";

/** How long no work may have held up the page before it counts as ready for a finger. */
const QUIET_MS = 2000;
const FETCHED = /\.(js|css|html)$|\/cases$/;

export interface FirstLoad {
  /** To the list of cases in sight, ms from the start of the visit. */
  readonly shownMs: number;
  /** To the end of the last piece of work over 50 ms. */
  readonly interactiveMs: number;
  /** Scripts, styles and the page itself, compressed. */
  readonly bytes: number;
}

/** A first visit to the list of cases, on a device that has nothing of the app. */
export async function firstLoad(page: Page): Promise<FirstLoad> {
  // The copy for offline use comes afterwards, and holds nobody up.
  await page.context().route("**/sw.js", (route) => route.abort());
  const sizes: Promise<number>[] = [];
  page.on("response", (response) => {
    if (FETCHED.test(new URL(response.url()).pathname)) sizes.push(response.body().then((body) => gzipSync(body).length));
  });
  await page.addInitScript(() => {
    const noted = globalThis as unknown as { longestEnd: number; shown: number };
    noted.longestEnd = 0;
    noted.shown = 0;
    new PerformanceObserver((list) => {
      for (const { startTime, duration } of list.getEntries()) noted.longestEnd = Math.max(noted.longestEnd, startTime + duration);
    }).observe({ type: "longtask", buffered: true });
    const look = (): void => {
      if (document.body?.textContent?.includes("No cases yet")) noted.shown = performance.now();
      else requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
  await page.goto("/cases");
  await page.getByText("No cases yet").waitFor();
  await page.waitForTimeout(QUIET_MS);
  const times = await page.evaluate(() => {
    const { longestEnd, shown } = globalThis as unknown as { longestEnd: number; shown: number };
    return { shownMs: shown, interactiveMs: Math.max(shown, longestEnd) };
  });
  return { ...times, bytes: (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0) };
}
