import { attributionSteps } from "@halfturn/engine/attribution";
import { uniformDeviates } from "@halfturn/engine/uncertainty";
import { expect, test } from "vitest";
import { finish } from "./finish.js";
import { causesOf } from "./hidden-cause.js";
import { between, inputOf, pick, plainTest, randomParts, randomProfile } from "./random-road-test.js";

const RUNS = 240;
/** A receiver that writes whole km/h once a second and more than a second late, and a better one. */
const COARSE = { interval: 1, lag: 1.2, resolution: 1 / 3.6, scale: 0.008, noise: 0.1 };
const FINE = { interval: 0.5, lag: 0.6, resolution: 0.1, scale: -0.01, noise: 0.05 };
/** The speed is followed in the vibration: amplitudes lose nothing that their interval does not say. */
const HELD = 0.9;
/** No single one is off by more than this at 0 dB. */
const WORST = 0.08;

test(`amplitudes of ${RUNS} runs at 0 dB whose speed is known from a poor log alone`, () => {
  const uniform = uniformDeviates(7);
  let [held, counted, worst] = [0, 0, 0];
  for (let seed = 0; seed < RUNS; seed++) {
    const { circumference, parts } = randomParts(uniform, { gearRatio: null });
    const cause = pick(uniform, causesOf(parts));
    const { contributions } = finish(
      attributionSteps(
        inputOf({
          ...plainTest(seed, circumference, parts),
          profile: randomProfile(uniform, 40),
          sources: [{ kind: "harmonic", ...cause, amplitude: 1, speedPower: 0, phase: between(uniform, 0, 6), gains: [1] }],
          roadNoise: Math.SQRT1_2,
          noiseColour: pick(uniform, ["white", "road"] as const),
          log: seed % 2 === 0 ? COARSE : FINE,
        }),
      ),
    );
    const found = contributions.find(({ part, order }) => part === cause.part && order === cause.order);
    const amplitude = found?.amplitudes[0];
    if (!found?.observable || found.together.length > 0 || !amplitude) continue;
    counted++;
    if (amplitude.low <= 1 && 1 <= amplitude.high) held++;
    worst = Math.max(worst, Math.abs(amplitude.value - 1));
  }
  console.info(`${held} of ${counted} held; worst ${(100 * worst).toFixed(1)} %`);
  expect(counted).toBeGreaterThan(RUNS / 2);
  expect(held / counted).toBeGreaterThan(HELD);
  expect(worst).toBeLessThan(WORST);
});
