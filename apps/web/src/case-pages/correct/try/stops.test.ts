import { readFileSync } from "node:fs";
import { examples, restore, toCorrectionInput } from "@halfturn/casefile";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { degreesToRadians } from "@halfturn/engine/units";
import { expect, test } from "vitest";
import { placeOf, stepsFrom, stopsOf, withAmount } from "./stops.js";

const restored = restore(readFileSync(new URL(examples.find(({ name }) => name === "two-piece")?.url ?? ""), "utf8"));
if (!restored.ok) throw new Error("the example does not open");
const stops = stopsOf(toCorrectionInput(restored.case, { defaults: DEFAULT_LIMITS, draws: 100, seed: 1 }));
const stopsFor = (id: string) => {
  const found = stops.find(({ adjuster }) => adjuster.id === id);
  if (!found) throw new Error(id);
  return found;
};

test("a slider stands at the sizes in stock and at nought, and goes no further out than what is fitted", () => {
  const millimetres = stopsFor("bearing-drop").amounts.map((amount) => Math.round(amount * 1e6) / 1e3);
  expect(millimetres).toEqual([-6, -3, 0, 3, 6, 9, 12, 15]);
  expect(stopsFor("wedge").amounts).toHaveLength(7);
  expect(stopsFor("turn-front").amounts).toHaveLength(8);
});

test("an amount finds its stop in spite of its last digits", () => {
  const wedge = stopsFor("wedge");
  expect(placeOf(wedge, degreesToRadians(2) + 1e-15)).toBe(wedge.amounts.indexOf(degreesToRadians(2)));
  expect(wedge.amounts[placeOf(wedge, 0)]).toBe(0);
});

test("an adjuster is changed once, and not at all by nought", () => {
  const once = withAmount([], "wedge", 0.02);
  expect(withAmount(once, "wedge", 0.03)).toEqual([{ adjusterId: "wedge", amount: 0.03 }]);
  expect(withAmount(once, "wedge", 0)).toEqual([]);
});

test("the next steps are those of every slider either way, the slider that was moved last first, and none beyond its last stop", () => {
  const drop = stopsFor("bearing-drop");
  const highest = withAmount(withAmount([], "wedge", degreesToRadians(2)), "bearing-drop", drop.amounts.at(-1) ?? 0);
  const steps = stepsFrom(highest, stops);
  expect(steps[0]).toEqual(withAmount(highest, "bearing-drop", drop.amounts.at(-2) ?? 0));
  const ends = stops.filter((one) => [0, one.amounts.length - 1].includes(placeOf(one, amountIn(highest, one.adjuster.id)))).length;
  expect(steps).toHaveLength(2 * stops.length - ends);
  for (const step of steps)
    expect(
      step.filter((change) => !highest.includes(change)).length + highest.filter((change) => !step.includes(change)).length,
    ).toBeGreaterThan(0);
});

const amountIn = (changes: ReturnType<typeof withAmount>, id: string): number =>
  changes.find(({ adjusterId }) => adjusterId === id)?.amount ?? 0;
