import { attributionSteps } from "@halfturn/engine/attribution";
import { shaftAngleFromSpeeds } from "@halfturn/engine/signal";
import { uniformDeviates } from "@halfturn/engine/uncertainty";
import { expect, test } from "vitest";
import { finish, must } from "./finish.js";
import { causesOf } from "./hidden-cause.js";
import { between, inputOf, pick, plainTest, randomParts } from "./random-road-test.js";

const RUNS = 100;
/** The driver read one number off the speedometer, up to 4 % wrong, and wandered by 2 % about what it was. */
const [READ_WRONG, WANDERED, ALLOWED] = [0.04, 0.02, 0.065];
const NAMED = 0.95;

test(`of ${RUNS} drives of a minute whose speed was read once off the speedometer the right order is named`, { timeout: 180_000 }, () => {
  const uniform = uniformDeviates(5);
  let [apart, right, misnamed] = [0, 0, 0];
  for (let seed = 0; seed < RUNS; seed++) {
    const { circumference, parts } = randomParts(uniform, { gearRatio: pick(uniform, [null, 1, 0.72]) });
    const cause = pick(uniform, causesOf(parts));
    const isCause = (one: { readonly part: string; readonly order: number }): boolean =>
      one.part === cause.part && one.order === cause.order;
    const read = between(uniform, 22, 30);
    const truth = read * (1 + between(uniform, -READ_WRONG, READ_WRONG));
    const times = [0, 10, 20, 30, 40, 50, 60];
    const shake = { kind: "harmonic", speedPower: 0, phase: 1, gains: [1] } as const;
    const input = inputOf({
      ...plainTest(seed, circumference, parts),
      profile: { times, speeds: times.map(() => truth * (1 + between(uniform, -WANDERED, WANDERED))) },
      sources: [
        { ...shake, ...cause, amplitude: 1 },
        { ...shake, part: "wheel", order: 1, amplitude: isCause({ part: "wheel", order: 1 }) ? 0 : 0.2 },
      ],
      roadNoise: Math.SQRT1_2,
      noiseColour: pick(uniform, ["white", "road"] as const),
      log: { interval: 1, lag: 0, resolution: 0, scale: 0, noise: 0 },
    });
    const turning = (2 * Math.PI * read) / circumference;
    const angle = must(shaftAngleFromSpeeds(Float64Array.of(0, 60), Float64Array.of(turning, turning)));
    const { verdict, contributions, coincidences } = finish(
      attributionSteps({ ...input, reference: { angle, perWheelTurn: 1, looseness: ALLOWED } }),
    );
    const parted =
      contributions.some((one) => isCause(one) && one.observable) &&
      !coincidences.some(({ first, second }) => isCause(first) || isCause(second));
    if (parted) apart++;
    if (parted && verdict !== null && isCause(verdict)) right++;
    if (verdict !== null && !isCause(verdict)) misnamed++;
  }
  console.info(`${right} of ${apart} right, ${misnamed} wrong of ${RUNS}`);
  expect(apart).toBeGreaterThan(RUNS / 2);
  expect(right / apart).toBeGreaterThanOrEqual(NAMED);
  expect(misnamed).toBe(0);
});
