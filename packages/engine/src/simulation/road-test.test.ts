import { expect, test } from "vitest";
import { circumferenceAsGiven, rotatingParts } from "../orders/index.js";
import { must } from "../signal/shaft-angle.test-support.js";
import type { MetresPerSecond } from "../units/index.js";
import { type RoadTest, simulateRoadTest } from "./road-test.js";

const parts = rotatingParts(
  { circumference: circumferenceAsGiven(2.5), axleRatio: 4, transferRatio: 1, gearRatio: null, cylinders: 6, slip: 0, accessories: [] },
  25 as MetresPerSecond,
);
const quiet: RoadTest = {
  seed: 7,
  parts,
  circumference: 2.5,
  profile: { times: [0, 10], speeds: [25, 25] },
  sources: [{ kind: "harmonic", part: "propeller-shaft", order: 1, amplitude: 2, speedPower: 2, phase: 0, gains: [1, 0.5] }],
  referenceSpeed: 25,
  roadNoise: 0,
  noiseColour: "white",
  resonance: null,
  sensor: { rate: 1000, filter: null, noise: 0, offset: 0, drift: 0, fullScale: null, resolution: 0 },
  axes: 2,
  log: null,
  tachometer: null,
};
const simulated = (change: Partial<RoadTest>) => must(simulateRoadTest({ ...quiet, ...change }));
const rms = (x: Float64Array = new Float64Array(1)): number => Math.sqrt(x.reduce((sum, v) => sum + v * v, 0) / x.length);
const ROUNDING = 1e-9;
/** Four standard errors of the RMS of 10,000 normal values. */
const CHANCE = 4 / Math.sqrt(20_000);

test("an unbalance at a steady speed is a cosine of the shaft's turns, as large as it was asked to be, on each axis by its gain", () => {
  const { channels } = simulated({});
  const [first, second] = channels;
  for (const n of [0, 1, 12, 999])
    expect(Math.abs((first?.samples[n] ?? NaN) - 2 * Math.cos((2 * Math.PI * 40 * n) / 1000))).toBeLessThan(ROUNDING);
  expect(Math.abs((second?.samples[12] ?? NaN) - (first?.samples[12] ?? NaN) / 2)).toBeLessThan(ROUNDING);
  expect(
    Math.abs(rms(simulated({ profile: { times: [0, 10], speeds: [12.5, 12.5] } }).channels[0]?.samples) / (2 / 4 / Math.SQRT2) - 1),
  ).toBeLessThan(1e-3);
});

test("what lies above half the rate folds back, unless a filter holds it off", () => {
  const sensor = { ...quiet.sensor, rate: 64 };
  // 40 Hz at 64 samples per second look like 24 Hz.
  const { samples } = simulated({ sensor }).channels[0] ?? { samples: new Float64Array(1) };
  for (const n of [1, 5, 63]) expect(Math.abs((samples[n] as number) - 2 * Math.cos((2 * Math.PI * 24 * n) / 64))).toBeLessThan(ROUNDING);
  const filtered = simulated({ sensor: { ...sensor, filter: 20 } }).channels[0]?.samples;
  expect(Math.abs(rms(filtered) / (rms(samples) / Math.sqrt(1 + 2 ** 8)) - 1)).toBeLessThan(1e-6);
});

test("noise, ringing, clipping and steps are as asked for, and the same for the same seed", () => {
  const nothing = { sources: [], axes: 1 };
  for (const noiseColour of ["white", "road"] as const) {
    const first = simulated({ ...nothing, roadNoise: 0.5, noiseColour });
    const share = noiseColour === "white" ? CHANCE : 10 * CHANCE; // some hundred times fewer independent values below 5 Hz
    expect(Math.abs(rms(first.channels[0]?.samples) / 0.5 - 1)).toBeLessThan(share);
    expect(simulated({ ...nothing, roadNoise: 0.5, noiseColour })).toMatchObject({
      channels: first.channels.map(({ samples }) => ({ samples })),
    });
  }
  const ringing = simulated({ ...nothing, resonance: { frequency: 30, damping: 0.03, roadRms: 0.2 } });
  expect(Math.abs(rms(ringing.channels[0]?.samples) / 0.2 - 1)).toBeLessThan(ROUNDING);
  const clipped = simulated({ sensor: { ...quiet.sensor, fullScale: 1, resolution: 0.25 } }).channels[0]?.samples ?? new Float64Array(0);
  expect(Math.max(...clipped)).toBe(1);
  expect(clipped.every((x) => Number.isInteger(x * 4))).toBe(true);
});

test("the tachometer pulses once a turn, and a log comes late and in steps", () => {
  const { pulses, log } = simulated({
    profile: { times: [0, 10], speeds: [20, 30] },
    tachometer: { part: "propeller-shaft", perTurn: 1, jitter: 0 },
    log: { interval: 1, lag: 1, resolution: 0.5, scale: 0, noise: 0 },
  });
  // 250 m are 100 wheel turns and 400 of the shaft, and the pulse at the start.
  expect(Math.abs((pulses?.length ?? 0) - 401)).toBeLessThanOrEqual(1);
  expect(Array.from(log?.speeds.slice(0, 4) ?? [])).toEqual([20, 20, 21, 22]);
});
