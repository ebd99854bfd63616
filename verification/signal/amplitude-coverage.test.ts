import { attributionSteps } from "@halfturn/engine/attribution";
import { uniformDeviates } from "@halfturn/engine/uncertainty";
import { expect, test } from "vitest";
import { finish } from "./finish.js";
import { between, inputOf, pick, plainTest, randomParts, randomProfile } from "./random-road-test.js";

const RUNS = 2000;
const SECONDS = 15;
/** Agreed: 93 to 97 cases of 100. */
const [LEAST, MOST] = [0.93, 0.97];
/** Three standard errors of half the cases. */
const OF_EACH = 0.02;

test(`the 95 % interval of an order's amplitude holds the truth in 93 to 97 of 100 of ${RUNS} runs at 0 dB`, () => {
  const uniform = uniformDeviates(20_260);
  const held = { white: 0, road: 0 };
  const counted = { white: 0, road: 0 };
  let worst = 0;
  for (let seed = 0; counted.white + counted.road < RUNS; seed++) {
    const { circumference, parts } = randomParts(uniform, { gearRatio: null });
    const source = pick(
      uniform,
      parts.flatMap(({ part, orders }) => orders.map(({ order }) => ({ part, order }))),
    );
    const amplitude = between(uniform, 0.05, 2);
    const noiseColour = seed % 2 === 0 ? "white" : "road";
    const plain = plainTest(seed, circumference, parts);
    const input = inputOf({
      ...plain,
      sensor: { ...plain.sensor, rate: 320 },
      profile: randomProfile(uniform, SECONDS),
      sources: [{ kind: "harmonic", ...source, amplitude, speedPower: 0, phase: between(uniform, 0, 6), gains: [1] }],
      roadNoise: amplitude / Math.SQRT2,
      noiseColour,
      tachometer: { part: "propeller-shaft", perTurn: 1, jitter: 0 },
    });
    const { contributions, coincidences } = finish(attributionSteps(input));
    const inseparable = coincidences.some((pair) =>
      [pair.first, pair.second].some((one) => one.part === source.part && one.order === source.order),
    );
    const found = contributions.find(({ part, order }) => part === source.part && order === source.order);
    const estimate = found?.amplitudes[0];
    if (inseparable || !estimate) continue;
    counted[noiseColour]++;
    if (estimate.low <= amplitude && amplitude <= estimate.high) held[noiseColour]++;
    worst = Math.max(worst, estimate.u / amplitude);
  }
  const shares = [held.white / counted.white, held.road / counted.road] as const;
  console.info(`held: white ${shares[0].toFixed(3)}, road ${shares[1].toFixed(3)}; largest u ${(100 * worst).toFixed(1)} %`);
  const both = (held.white + held.road) / RUNS;
  expect(both).toBeGreaterThan(LEAST);
  expect(both).toBeLessThan(MOST);
  for (const share of shares) expect(Math.abs(share - 0.95)).toBeLessThan(OF_EACH);
});
