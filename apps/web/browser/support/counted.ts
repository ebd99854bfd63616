import type { Locator, Page } from "playwright-core";

/** Every tap and every key press of a person, counted. */
export interface Counted {
  readonly tap: (what: Locator) => Promise<void>;
  readonly press: (key: string) => Promise<void>;
  /** One press for each sign. */
  readonly type: (text: string) => Promise<void>;
  readonly actions: () => number;
}

export function counted(page: Page): Counted {
  let count = 0;
  const press = async (key: string): Promise<void> => {
    count++;
    await page.keyboard.press(key);
  };
  return {
    tap: async (what) => {
      count++;
      await what.tap();
    },
    press,
    type: async (text) => {
      for (const sign of text) await press(sign);
    },
    actions: () => count,
  };
}
