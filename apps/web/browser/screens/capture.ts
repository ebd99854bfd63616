import { Buffer } from "node:buffer";
import type { Page } from "playwright-core";

/** Points of the picture for each of the page: text stays sharp where the picture is shown smaller. */
const SCALE = 2;
const QUALITY = 72;

/** The visible part of a page as WebP. */
export async function capture(page: Page): Promise<Buffer> {
  const { width, height } = page.viewportSize() ?? { width: 0, height: 0 };
  const session = await page.context().newCDPSession(page);
  const { data } = await session.send("Page.captureScreenshot", {
    format: "webp",
    quality: QUALITY,
    clip: { x: 0, y: 0, width, height, scale: SCALE },
  });
  await session.detach();
  return Buffer.from(data, "base64");
}
