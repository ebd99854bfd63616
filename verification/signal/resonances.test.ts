import { attributionSteps, type Resonance } from "@halfturn/engine/attribution";
import { uniformDeviates } from "@halfturn/engine/uncertainty";
import { expect, test } from "vitest";
import { finish } from "./finish.js";
import { causesOf } from "./hidden-cause.js";
import { between, inputOf, pick, plainTest, randomParts } from "./random-road-test.js";

const OF_EACH = 40;
/** So many of those that are there are found, at their frequency to so much; where there is none, none is. */
const FOUND = 0.8;
const NEAR = 0.08;

test(`of ${3 * OF_EACH} drives up and down by 30 % a resonance is told from an order, whoever excites it`, () => {
  const uniform = uniformDeviates(55);
  const found = { road: 0, orders: 0 };
  const invented: Resonance[] = [];
  for (let seed = 0; seed < 3 * OF_EACH; seed++) {
    const excitedBy = (["none", "road", "orders"] as const)[seed % 3] ?? "none";
    const { circumference, parts } = randomParts(uniform, { gearRatio: pick(uniform, [null, 1, 0.72]) });
    const orders = causesOf(parts).filter(({ order }) => order >= 1);
    const cause = pick(uniform, orders);
    const v = between(uniform, 18, 24);
    const perMetre = ((parts.find(({ part }) => part === cause.part)?.perWheelTurn ?? 1) * cause.order) / circumference;
    // An order that runs through it is at the resonance halfway up.
    const frequency = excitedBy === "orders" ? perMetre * v * 1.15 : between(uniform, 15, 80);
    const { resonances } = finish(
      attributionSteps(
        inputOf({
          ...plainTest(seed, circumference, parts),
          profile: { times: [0, 30, 60], speeds: [v, 1.3 * v, v] },
          sources: [{ kind: "harmonic", ...cause, amplitude: 0.7, speedPower: cause.order === 1 ? 2 : 0, phase: 1, gains: [1] }],
          roadNoise: 0.7,
          noiseColour: pick(uniform, ["white", "road"] as const),
          resonance:
            excitedBy === "none" ? null : { frequency, damping: between(uniform, 0.02, 0.06), roadRms: excitedBy === "road" ? 0.7 : 0 },
          tachometer: { part: "propeller-shaft", perTurn: 1, jitter: 1e-4 },
        }),
      ),
    );
    if (excitedBy === "none") invented.push(...resonances);
    else if (resonances.some((one) => one.excitedBy === excitedBy && Math.abs(one.frequency / frequency - 1) < NEAR)) found[excitedBy]++;
  }
  console.info(`found ${found.road} and ${found.orders} of ${OF_EACH} each; invented ${invented.length}`);
  expect(found.road / OF_EACH).toBeGreaterThanOrEqual(FOUND);
  expect(found.orders / OF_EACH).toBeGreaterThanOrEqual(FOUND);
  expect(invented).toEqual([]);
});
