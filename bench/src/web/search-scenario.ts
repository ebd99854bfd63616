import type { Page } from "playwright-core";
import { pressToPaint } from "./press-to-paint.js";
import { repeated, type Scenario, SETTLED_MS, typing } from "./scenario.js";

/** As many as a busy shop has on one tablet. */
const CASES = 100;

/** Copies of the one case that the device has, under names that the letters below tell apart. */
const copied = (page: Page): Promise<void> =>
  page.evaluate(async (count) => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open("halfturn");
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(opening.error);
    });
    const cases = database.transaction("cases", "readwrite").objectStore("cases");
    const all = cases.getAll();
    all.onsuccess = () => {
      const [kept] = all.result;
      for (let k = 0; k < count; k++) {
        const id = `copy-${k}`;
        cases.put({ ...kept, id, waiting: 0, document: { ...kept.document, id, title: `${k % 10 === 0 ? "Zebra" : "Tipper"} ${k}` } });
      }
    };
    await new Promise((resolve, reject) => {
      cases.transaction.oncomplete = resolve;
      cases.transaction.onerror = reject;
    });
  }, CASES);

export const searchScenario: Scenario = {
  name: `Cases: a letter sought among ${CASES}`,
  watched: [{ name: "the field" }, { name: "the list" }],
  times: async (stage) => {
    const { page, example } = stage;
    await page.goto(`/cases/${example}/describe`);
    await page.getByLabel("In one line").waitFor();
    await page.waitForTimeout(2 * SETTLED_MS);
    await copied(page);
    await page.goto("/cases");
    const field = page.getByRole("searchbox");
    await page.getByText("Zebra 0", { exact: true }).waitFor();
    await page.waitForTimeout(3 * SETTLED_MS);
    await field.focus();
    return repeated(stage, typing, (k) =>
      pressToPaint(page, [field, page.locator("main ul").first()], "keydown", () => page.keyboard.press(k % 2 === 0 ? "z" : "Backspace")),
    );
  },
};
