import { beforeAll, describe, expect, test } from "vitest";
import { falseAlarms, slipTally, type Tally, totalOf } from "./detection-rates.js";
import { LAYOUTS } from "./layouts.js";
import { SLIPS, type SlipName } from "./slips.js";

/** Gaugings of each kind and family; they are shared out among its layouts. */
const SETS = 400;
const FAMILIES = ["one-piece", "two-piece", "three-piece"] as const;

const LEAST_CAUGHT_OF_ALL = 0.9;
const LEAST_CAUGHT_OF_A_KIND = 0.85;
const MOST_FALSE_ALARMS = 0.02;
/** A sound reading may be set aside in its neighbour's stead in no more than this share of the slips. */
const MOST_SETTLED_WRONGLY = 0.01;

const layoutsOf = (family: string) => LAYOUTS.filter(({ name }) => name.startsWith(family));
const tallyOf = (slip: SlipName, family: string, seed: number): Tally => {
  const layouts = layoutsOf(family);
  return totalOf(layouts.map((layout, k) => slipTally(slip, layout, SETS / layouts.length, seed + k)));
};

// The shares are our own requirement; there is no published one.
describe.each(FAMILIES)("%s", (family) => {
  const tallies = new Map<SlipName, Tally>();
  beforeAll(() => {
    SLIPS.forEach((slip, s) => {
      tallies.set(slip, tallyOf(slip, family, 1000 * s));
    });
  }, 120_000);

  test.each(SLIPS)("%s: visible slips are caught", (slip) => {
    const { visible, caught } = tallies.get(slip) as Tally;
    expect(visible).toBeGreaterThan(50);
    expect(caught / visible).toBeGreaterThanOrEqual(LEAST_CAUGHT_OF_A_KIND);
  });

  test("all kinds together", () => {
    const { caught, visible, settledWrongly } = totalOf([...tallies.values()]);
    expect(caught / visible).toBeGreaterThanOrEqual(LEAST_CAUGHT_OF_ALL);
    expect(settledWrongly / visible).toBeLessThanOrEqual(MOST_SETTLED_WRONGLY);
  });

  test("clean gaugings rarely raise an alarm", { timeout: 60_000 }, () => {
    const layouts = layoutsOf(family);
    const rates = layouts.map((layout, k) => falseAlarms(layout, SETS / 2, 9000 + k));
    expect(rates.reduce((sum, rate) => sum + rate, 0) / rates.length).toBeLessThanOrEqual(MOST_FALSE_ALARMS);
  });
});
