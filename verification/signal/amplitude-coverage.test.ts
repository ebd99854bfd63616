import { attributionSteps } from "@halfturn/engine/attribution";
import { uniformDeviates } from "@halfturn/engine/uncertainty";
import { expect, test } from "vitest";
import { finish } from "./finish.js";
import { between, inputOf, pick, plainTest, randomParts, randomProfile } from "./random-road-test.js";

/** Of each kind of noise: 2,000 in all. */
const RUNS = 1000;
const SECONDS = 15;
/** Agreed: 93 to 97 cases of 100; three standard errors of 1,000 cases are 2.1. */
const [LEAST, MOST] = [0.93, 0.97];

test.each(["white", "road"] as const)(
  `the interval of 95 per cent of an order's amplitude holds the truth in 93 to 97 of 100 of ${RUNS} runs in %s noise at 0 dB`,
  (noiseColour) => {
    const uniform = uniformDeviates(20_260);
    let [held, counted, worst] = [0, 0, 0];
    for (let seed = 0; counted < RUNS; seed++) {
      const { circumference, parts } = randomParts(uniform, { gearRatio: null });
      const orders = parts.flatMap(({ part, orders: own }) => own.map(({ order }) => ({ part, order })));
      const source = pick(uniform, orders);
      const amplitude = between(uniform, 0.05, 2);
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
      const isSource = (one: { readonly part: string; readonly order: number }): boolean =>
        one.part === source.part && one.order === source.order;
      const inseparable = coincidences.some(({ first, second }) => isSource(first) || isSource(second));
      const estimate = contributions.find(isSource)?.amplitudes[0];
      if (inseparable || !estimate) continue;
      counted++;
      if (estimate.low <= amplitude && amplitude <= estimate.high) held++;
      worst = Math.max(worst, estimate.u / amplitude);
    }
    console.info(`held ${((100 * held) / counted).toFixed(1)} %; largest u ${(100 * worst).toFixed(1)} %`);
    expect(held / counted).toBeGreaterThan(LEAST);
    expect(held / counted).toBeLessThan(MOST);
  },
);
