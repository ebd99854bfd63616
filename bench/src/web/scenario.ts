import type { Case } from "@halfturn/casefile";
import type { Page } from "playwright-core";

/** What is watched after a press. */
export interface Watched {
  readonly name: string;
  /** A drawing that follows the numbers: told, and held to no budget. */
  readonly follows?: true;
}

export interface Stage {
  readonly page: Page;
  /** The id of an example case with everything in it. */
  readonly example: string;
  /** Gives a case to the server. */
  readonly put: (document: Case) => Promise<void>;
  /** Measures the machine, between presses. */
  readonly measure: () => Promise<void>;
}

export interface Scenario {
  readonly name: string;
  readonly watched: readonly Watched[];
  /** Opens a page and gives the milliseconds of every press, one for each of `watched`. */
  readonly times: (stage: Stage) => Promise<readonly (readonly number[])[]>;
}

export const PRESSES = 40;
/** From one measuring of the machine to the next. */
const PRESSES_BETWEEN = 4;
/** Until the thorough answer to the press before is in, so that what changes next is the answer to the next press. */
export const SETTLED_MS = 700;
/** Slower than fast typing and faster than slow typing: an answer to an earlier letter may fall into any of them. */
const TYPING_MS = [90, 170, 260, 420] as const;

export const settled = (): number => SETTLED_MS;
export const typing = (k: number): number => TYPING_MS[k % TYPING_MS.length] ?? SETTLED_MS;

/** A press for each number, with a pause before each. */
export async function repeated({ page, measure }: Stage, pause: (k: number) => number, once: (k: number) => Promise<readonly number[]>) {
  const times: (readonly number[])[] = [];
  for (let k = 0; k < PRESSES; k++) {
    if (k % PRESSES_BETWEEN === 0) {
      // What the last press left to do must not be taken for the machine.
      await page.waitForTimeout(SETTLED_MS);
      await measure();
    }
    await page.waitForTimeout(pause(k));
    times.push(await once(k));
  }
  return times;
}
