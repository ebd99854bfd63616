import { newCase } from "@halfturn/casefile";
import { pressToPaint } from "./press-to-paint.js";
import { pressing } from "./pressing.js";
import { PRESSES, repeated, type Scenario, SETTLED_MS, type Stage, typing } from "./scenario.js";

/** Of a two-piece driveline on the ground: what is typed at the six places. */
const READINGS = ["2.4", "5.6", "5.6", "5.1", "5.1", "2.1"] as const;

async function startGauging({ page, put }: Stage, id: string): Promise<void> {
  await put(newCase({ id, title: id, layout: "two-piece", createdAt: "2026-01-01" }));
  await page.goto(`/cases/${id}/gauge`);
  await page.getByText(/^on a drive-on lift$/i).click();
  await page.getByRole("button", { name: "Start reading" }).click();
  await page.getByLabel("Reading in degrees").waitFor();
}

export const gaugeScenarios: readonly Scenario[] = [
  {
    name: "Gauge: a digit on the pad",
    watched: [{ name: "the reading" }],
    times: async (stage) => {
      const { page } = stage;
      await startGauging(stage, "digits");
      const readout = page.getByLabel("Reading in degrees");
      const digit = await pressing(page, page.getByRole("button", { name: "5", exact: true }));
      const remove = await pressing(page, page.getByRole("button", { name: "Back", exact: true }));
      return repeated(stage, typing, (k) => pressToPaint(page, [readout], "click", k % 4 < 2 ? digit : remove));
    },
  },
  {
    name: "Gauge: a reading is kept",
    watched: [{ name: "the row of places" }, { name: "the angles" }],
    times: async (stage) => {
      const { page, measure } = stage;
      const times: (readonly number[])[] = [];
      for (let gauging = 0; times.length < PRESSES; gauging++) {
        await startGauging(stage, `kept-${gauging}`);
        await measure();
        for (const [place, reading] of READINGS.entries()) {
          await page.keyboard.type(reading);
          if (place === 0) await page.keyboard.press("ArrowRight");
          await page.waitForTimeout(SETTLED_MS);
          // The first reading gives no angle yet, nor does the first of two on one shaft.
          const givesAngle = place % 2 === 1;
          const shown = [page.locator("main nav"), page.locator("main ul[aria-live=polite]")];
          if (givesAngle) times.push(await pressToPaint(page, shown, "keydown", () => page.keyboard.press("Enter")));
          else await page.keyboard.press("Enter");
        }
      }
      return times;
    },
  },
];
