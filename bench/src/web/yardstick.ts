import type { Page } from "playwright-core";
import { calibrationKernel, STEPS } from "../kernel.js";

/** Of the kernel, what takes 50 ms where the whole of it takes 80 on the slowed main thread: as much as a press may take. */
const ALLOWED_STEPS = 0.625 * STEPS;
/** At each place of measuring. */
const RUNS = 3;
/** In which the browser makes fast code of it. */
const WARM_UP = 2;

export interface Yardstick {
  /** ms of every run so far. */
  readonly times: readonly number[];
  /** Runs it a few times. */
  readonly measure: () => Promise<void>;
}

/** Work of a known size on the page's main thread, run between the presses: what else the machine does lengthens both alike. */
export async function yardstickOn(page: Page): Promise<Yardstick> {
  const times: number[] = [];
  const run = async (): Promise<number> => {
    const started = await page.evaluate(() => performance.now());
    await page.evaluate(calibrationKernel, ALLOWED_STEPS);
    return (await page.evaluate(() => performance.now())) - started;
  };
  for (let k = 0; k < WARM_UP; k++) await run();
  return {
    times,
    measure: async () => {
      for (let k = 0; k < RUNS; k++) times.push(await run());
    },
  };
}
