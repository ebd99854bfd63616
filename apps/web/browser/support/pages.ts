import type { Page } from "playwright-core";
import { stillness } from "./stillness.js";

/** The steps that have a page, in the order of the main flow. */
export const STEPS = ["describe", "record", "gauge", "explain", "correct", "prove", "report"] as const;

/** Everything that can be opened, for a case of this id. */
export const pathsOf = (id: string): readonly string[] => [
  "/cases",
  "/cases/new",
  "/settings",
  ...STEPS.map((step) => `/cases/${id}/${step}`),
];

/** Opens a page and waits until what it has to say has been worked out. */
export async function show(page: Page, path: string): Promise<void> {
  await page.goto(path);
  await page.locator("main h2, main label, main button").first().waitFor();
  await stillness(page);
}
