import type { Locator, Page } from "playwright-core";

/** How long a finger or a mouse button stays down (common practice, no source): what the touch itself draws, the key that looks pressed, is drawn before it is lifted. */
const HELD_MS = 80;

/** A press on the middle of a button, found beforehand: to look for it would cost the page time. */
export async function pressing(page: Page, button: Locator): Promise<() => Promise<void>> {
  const box = await button.boundingBox();
  if (!box) throw new Error("a button is not in sight");
  return () => page.mouse.click(box.x + box.width / 2, box.y + box.height / 2, { delay: HELD_MS });
}
