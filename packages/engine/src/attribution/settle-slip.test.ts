import { expect, test } from "vitest";
import { must } from "../signal/shaft-angle.test-support.js";
import type { HarmonicSource } from "../simulation/index.js";
import { partsOf, recorded, shake } from "./attribution-cases.test-support.js";
import { attribute } from "./index.js";
import { slipOf } from "./settle-slip.js";

/** Runs ahead by 3 % of the up to 5 % that the case allows. */
const SLIP = 0.05;
const AHEAD = 1.03;
const asGiven = partsOf({ gearRatio: 1, slip: SLIP });
const asDriven = partsOf({ gearRatio: 1 }).map((part) =>
  part.part === "engine" ? { ...part, perWheelTurn: part.perWheelTurn * AHEAD } : part,
);

const listen = async (sources: readonly HarmonicSource[]) =>
  must(await attribute({ ...recorded({ parts: asDriven, sources, roadNoise: 0.5 }), parts: asGiven }));

test("the middle of the slip is where a part is put, and half of it how far it may be from there", () => {
  for (const part of asGiven) expect(Math.abs(slipOf(part, asGiven) - (part.part === "engine" ? SLIP / 2 : 0))).toBeLessThan(1e-3);
});

test("an engine that slips is found where it is", async () => {
  const result = await listen([shake("engine", 3, 0.8)]);
  expect(result.verdict).toMatchObject({ part: "engine", order: 3 });
  const amplitude = result.contributions.find(({ part, order }) => part === "engine" && order === 3)?.amplitudes[0];
  // Its place is known to a quarter of a line: a little of the amplitude is lost.
  expect(Math.abs((amplitude?.value ?? Number.NaN) / 0.8 - 1)).toBeLessThan(0.1);
});

test("while nothing shows where the engine is, an order within its reach may be the engine's", async () => {
  const result = await listen([shake("propeller-shaft", 1)]);
  expect(result.verdict).toBeNull();
  expect(result.abstained?.between).toEqual(
    expect.arrayContaining([
      { part: "propeller-shaft", order: 1 },
      { part: "engine", order: 1 },
    ]),
  );
});

test("where the engine is heard beside it, the shaft is named", async () => {
  const result = await listen([shake("propeller-shaft", 1), shake("engine", 3, 0.4)]);
  expect(result.verdict).toMatchObject({ part: "propeller-shaft", order: 1 });
});
