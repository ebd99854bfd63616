import type { Locator, Page } from "playwright-core";

/** A press on the middle of a button, found beforehand: to look for it would cost the page time. */
export async function pressing(page: Page, button: Locator): Promise<() => Promise<void>> {
  const box = await button.boundingBox();
  if (!box) throw new Error("a button is not in sight");
  return () => page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
}
