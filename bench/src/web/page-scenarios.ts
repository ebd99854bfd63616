import type { Locator, Page } from "playwright-core";
import { pressToPaint } from "./press-to-paint.js";
import { pressing } from "./pressing.js";
import { repeated, type Scenario, SETTLED_MS, settled, typing } from "./scenario.js";

async function ready(page: Page, path: string, at: Locator): Promise<void> {
  await page.goto(path);
  await at.waitFor();
  await page.waitForTimeout(3 * SETTLED_MS);
  await at.focus();
}

const cardOf = (page: Page, inside: Locator): Locator => page.locator("section", { has: inside }).last();
const titled = (page: Page, title: string): Locator => cardOf(page, page.getByRole("heading", { name: title, exact: true }));

/** Two keys in turn, each twice, so that what they do is taken back. */
const inTurn = (page: Page, there: string, back: string, times: number) => (k: number) => () =>
  page.keyboard.press(k % (2 * times) < times ? there : back);

export const pageScenarios: readonly Scenario[] = [
  {
    name: "Describe: a letter of the title",
    watched: [{ name: "the field" }, { name: "the heading" }],
    times: async (stage) => {
      const { page, example } = stage;
      const field = page.getByLabel("In one line");
      await ready(page, `/cases/${example}/describe`, field);
      await page.keyboard.press("End");
      const press = inTurn(page, "5", "Backspace", 4);
      return repeated(stage, typing, (k) => pressToPaint(page, [field, page.locator("header h1")], "keydown", press(k)));
    },
  },
  {
    name: "Describe: a digit of a length",
    watched: [{ name: "the field" }],
    times: async (stage) => {
      const { page, example } = stage;
      const field = page.getByLabel("Length, joint centre to joint centre").first();
      await ready(page, `/cases/${example}/describe`, field);
      // With one digit more or less it is a length that the case takes.
      await field.fill("118");
      const press = inTurn(page, "5", "Backspace", 1);
      return repeated(stage, typing, (k) => pressToPaint(page, [field], "keydown", press(k)));
    },
  },
  {
    name: "Correct: a step of a slider",
    watched: [{ name: "the numbers" }, { name: "the drawing", follows: true }],
    times: async (stage) => {
      const { page, example } = stage;
      const slider = page.getByRole("slider", { name: "Spring pad wedges" });
      await ready(page, `/cases/${example}/correct`, slider);
      const foretold = cardOf(page, page.getByRole("heading", { name: "Foretold, not measured" }));
      const shown = [foretold.locator("ul").last(), foretold.locator("div", { has: page.locator("svg") }).last()];
      const press = inTurn(page, "ArrowRight", "ArrowLeft", 3);
      return repeated(stage, settled, (k) => pressToPaint(page, shown, "keydown", press(k)));
    },
  },
  {
    name: "Explain: a joint is moved by key",
    watched: [{ name: "the joints" }, { name: "the last chart", follows: true }],
    times: async (stage) => {
      const { page, example } = stage;
      const handle = page.getByRole("slider", { name: "Move J2 up or down" });
      await ready(page, `/cases/${example}/explain`, handle);
      const chart = titled(page, "What the shafts feel")
        .locator("div", { has: page.locator("svg") })
        .last();
      const press = inTurn(page, "PageUp", "PageDown", 2);
      return repeated(stage, settled, (k) => pressToPaint(page, [titled(page, "Joints"), chart], "keydown", press(k)));
    },
  },
  {
    name: "Explain: a shaft end is dragged",
    watched: [{ name: "the joints" }],
    times: async (stage) => {
      const { page, example } = stage;
      const handle = page.getByRole("slider", { name: /^Tilt/ }).last();
      await ready(page, `/cases/${example}/explain`, handle);
      await handle.scrollIntoViewIfNeeded();
      const box = await handle.boundingBox();
      if (!box) throw new Error("the end of the driven shaft is not in sight");
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      await page.mouse.move(x, y);
      await page.mouse.down();
      const joints = titled(page, "Joints");
      return repeated(stage, settled, (k) =>
        pressToPaint(page, [joints], "pointermove", () => page.mouse.move(x, y - (k % 2 === 0 ? 6 : 0))),
      );
    },
  },
  {
    name: "Correct: a step by button",
    watched: [{ name: "the numbers" }],
    times: async (stage) => {
      const { page, example } = stage;
      const less = page.getByRole("button", { name: "Spring pad wedges: less", exact: true });
      const more = page.getByRole("button", { name: "Spring pad wedges: more", exact: true });
      await ready(page, `/cases/${example}/correct`, more);
      await more.scrollIntoViewIfNeeded();
      const [there, back] = [await pressing(page, more), await pressing(page, less)];
      const numbers = cardOf(page, page.getByRole("heading", { name: "Foretold, not measured" }))
        .locator("ul")
        .last();
      return repeated(stage, settled, (k) => pressToPaint(page, [numbers], "click", k % 2 === 0 ? there : back));
    },
  },
];
