import { type Case, newCase } from "@halfturn/casefile";
import type { Locator, Page } from "playwright-core";
import { pressToPaint } from "./press-to-paint.js";

const SAMPLES = 40;
/** Until the thorough answer to the press before is in, so that what changes next is the answer to the next press. */
const SETTLED_MS = 800;
/** Slower than fast typing and faster than slow typing: an answer to an earlier letter may fall into any of them. */
const TYPING_MS = [90, 170, 260, 420] as const;
/** Of a two-piece driveline on the ground: what is typed at the six places, and the key of the lower end. */
const READINGS = ["2.4", "5.6", "5.6", "5.1", "5.1", "2.1"] as const;
const GAUGINGS = 6;

export interface Scenario {
  readonly name: string;
  /** Opens the page and gives every press's milliseconds. */
  readonly times: (page: Page, put: (document: Case) => Promise<void>, example: string) => Promise<readonly number[]>;
}

/** A press for each number, with a pause before each. */
async function repeated(page: Page, count: number, pause: (k: number) => number, once: (k: number) => Promise<number>) {
  const times: number[] = [];
  for (let k = 0; k < count; k++) {
    await page.waitForTimeout(pause(k));
    times.push(await once(k));
  }
  return times;
}

const settled = (): number => SETTLED_MS;
const typing = (k: number): number => TYPING_MS[k % TYPING_MS.length] ?? SETTLED_MS;

async function ready(page: Page, path: string, at: Locator): Promise<void> {
  await page.goto(path);
  await at.waitFor();
  await page.waitForTimeout(2 * SETTLED_MS);
}

async function startGauging(page: Page, put: (document: Case) => Promise<void>, id: string): Promise<void> {
  await put(newCase({ id, title: id, layout: "two-piece", createdAt: "2026-01-01" }));
  await page.goto(`/cases/${id}/gauge`);
  await page.getByText("on a drive-on lift", { exact: true }).click();
  await page.getByRole("button", { name: "Start reading" }).click();
  await page.getByLabel("Reading in degrees").waitFor();
}

/** Letters typed into a field, and taken out again before it is long. */
const letters = (page: Page, field: Locator, shown: Locator) => async (k: number) =>
  pressToPaint(page, shown, "keydown", () => field.press(k % 8 < 4 ? "5" : "Backspace"));

const keptReading = (page: Page) => async (put: (document: Case) => Promise<void>) => {
  const times: number[] = [];
  for (let gauging = 0; gauging < GAUGINGS; gauging++) {
    await startGauging(page, put, `kept-${gauging}`);
    for (const [place, reading] of READINGS.entries()) {
      await page.keyboard.type(reading);
      if (place === 0) await page.keyboard.press("ArrowRight");
      await page.waitForTimeout(SETTLED_MS);
      // The first reading gives no angle yet, nor do the two readings of one shaft: the place that is asked for next is what changes then.
      const givesAngle = place % 2 === 1 && place > 0;
      const shown = givesAngle ? page.locator("main ul[aria-live=polite]") : page.locator("main h2").first();
      const ms = await pressToPaint(page, shown, "keydown", () => page.keyboard.press("Enter"));
      if (givesAngle) times.push(ms);
    }
  }
  return times;
};

export const SCENARIOS: readonly Scenario[] = [
  {
    name: "Gauge: a digit on the pad",
    times: async (page, put) => {
      await startGauging(page, put, "digits");
      const readout = page.getByLabel("Reading in degrees");
      const digit = page.getByRole("button", { name: "5", exact: true });
      const remove = page.getByRole("button", { name: "Back", exact: true });
      return repeated(page, SAMPLES, typing, (k) => pressToPaint(page, readout, "click", () => (k % 4 < 2 ? digit : remove).click()));
    },
  },
  { name: "Gauge: a reading kept, to the angles", times: (page, put) => keptReading(page)(put) },
  {
    name: "Describe: the title, to the heading",
    times: async (page, _, example) => {
      const field = page.getByLabel("In one line");
      await ready(page, `/cases/${example}/describe`, field);
      return repeated(page, SAMPLES, typing, letters(page, field, page.locator("header h1")));
    },
  },
  {
    name: "Describe: a length",
    times: async (page, _, example) => {
      const field = page.getByLabel("Length, joint centre to joint centre").first();
      await ready(page, `/cases/${example}/describe`, field);
      await field.fill("");
      return repeated(page, SAMPLES, typing, letters(page, field, field));
    },
  },
  {
    name: "Correct: a slider step, to the figures",
    times: async (page, _, example) => {
      const slider = page.getByRole("slider", { name: "Spring pad wedges" });
      await ready(page, `/cases/${example}/correct`, slider);
      const card = page.locator("section", { has: slider }).last();
      const figures = card.locator("ul").last();
      return repeated(page, SAMPLES, settled, (k) =>
        pressToPaint(page, figures, "keydown", () => slider.press(k % 6 < 3 ? "ArrowRight" : "ArrowLeft")),
      );
    },
  },
  ...(["Joints", "Cancellation"] as const).map(
    (title): Scenario => ({
      name: `Explain: a handle, to the card "${title}"`,
      times: async (page, _, example) => {
        const handle = page.getByRole("slider", { name: "Move J2 up or down" });
        await ready(page, `/cases/${example}/explain`, handle);
        const card = page.locator("section", { has: page.getByRole("heading", { name: title, exact: true }) }).last();
        return repeated(page, SAMPLES, typing, (k) =>
          pressToPaint(page, card, "keydown", () => handle.press(k % 4 < 2 ? "PageUp" : "PageDown")),
        );
      },
    }),
  ),
];
