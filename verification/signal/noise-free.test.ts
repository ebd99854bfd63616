import { attributionSteps } from "@halfturn/engine/attribution";
import { uniformDeviates } from "@halfturn/engine/uncertainty";
import { expect, test } from "vitest";
import { finish } from "./finish.js";
import { between, inputOf, plainTest, randomParts } from "./random-road-test.js";

/** Agreed: 0.1 % of the order's own amplitude. */
const ALLOWED = 1e-3;
const RUNS = 100;

test(`orders of ${RUNS} swept runs without noise, four at once, come out right to 0.1 %`, () => {
  const uniform = uniformDeviates(77);
  let worst = 0;
  for (let seed = 0; seed < RUNS; seed++) {
    const { circumference, parts } = randomParts(uniform, { gearRatio: null, axleRatio: between(uniform, 3.2, 4.8) });
    const orders = [
      ["wheel", 1],
      ["wheel", 2],
      ["propeller-shaft", 1],
      ["propeller-shaft", 2],
    ] as const;
    const sources = orders.map(([part, order]) => ({
      kind: "harmonic" as const,
      part,
      order,
      amplitude: between(uniform, 0.3, 2),
      speedPower: 0,
      phase: between(uniform, 0, 6),
      gains: [1],
    }));
    const v = between(uniform, 17, 24);
    const { contributions, coincidences } = finish(
      attributionSteps(
        inputOf({
          ...plainTest(seed, circumference, parts),
          sensor: { rate: 2048, filter: null, noise: 0, offset: 0.2, drift: 0, fullScale: null, resolution: 0 },
          profile: { times: [0, 30], speeds: [v, 1.3 * v] },
          sources,
          tachometer: { part: "propeller-shaft", perTurn: 1, jitter: 0 },
        }),
      ),
    );
    for (const { part, order, amplitude } of sources) {
      if (coincidences.some((pair) => [pair.first, pair.second].some((one) => one.part === part && one.order === order))) continue;
      const found = contributions.find((one) => one.part === part && one.order === order)?.amplitudes[0]?.value ?? Number.NaN;
      worst = Math.max(worst, Math.abs(found / amplitude - 1));
    }
  }
  console.info(`worst ${(100 * worst).toFixed(4)} %`);
  expect(worst).toBeGreaterThan(0);
  expect(worst).toBeLessThan(ALLOWED);
});
