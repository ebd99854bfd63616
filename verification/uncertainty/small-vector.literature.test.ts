import { drawOutputs, jointNormal, momentsOf, propagateVector } from "@halfturn/engine/uncertainty";
import { test } from "vitest";
import { DRAWS, expectWithin, halfUnit, ofDeviation, ofMean } from "./expect-within.js";

// JCGM 102:2011, conversion of a complex quantity to magnitude and phase (u = 0.01 of each part), tables 6 and 7 as repeated in the open tests of a
// national laboratory's calculator. A small vibration vector behaves so: its magnitude is biased high and its phase is anybody's guess.

const U = 0.01;
const polar = (x: Float64Array, y: Float64Array): void => {
  const [real, imaginary] = x as unknown as [number, number];
  y[0] = Math.hypot(real, imaginary);
  y[1] = Math.atan2(imaginary, real);
};
const THOUSANDTH = halfUnit(0.001);

const simulated = [
  { real: 0.001, r: 0, magnitude: [0.013, 0.007], phase: [0, 1.744] },
  { real: 0.001, r: 0.9, magnitude: [0.012, 0.008], phase: [-0.556, 1.599] },
  { real: 0.01, r: 0.9, magnitude: [0.015, 0.008], phase: [-0.343, 0.903] },
] as const;

for (const { real, r, magnitude, phase } of simulated) {
  const correlation = [
    [1, r],
    [r, 1],
  ];
  const samples = drawOutputs({ inputs: [jointNormal([real, 0], [U, U], correlation)], outputs: 2, model: polar, draws: DRAWS, seed: 17 });
  const [drawnMagnitude, drawnPhase] = samples.map(momentsOf) as [ReturnType<typeof momentsOf>, ReturnType<typeof momentsOf>];
  test.each([
    ["mean magnitude", drawnMagnitude.mean, magnitude[0], THOUSANDTH + ofMean(magnitude[1])],
    ["u of the magnitude", drawnMagnitude.standardDeviation, magnitude[1], THOUSANDTH + ofDeviation(magnitude[1])],
    ["mean phase", drawnPhase.mean, phase[0], THOUSANDTH + ofMean(phase[1])],
    ["u of the phase", drawnPhase.standardDeviation, phase[1], THOUSANDTH + ofDeviation(phase[1])],
  ])(`Re ${real}, r ${r}, Monte Carlo: %s`, (_, actual, published, tolerance) => expectWithin(actual, published, tolerance));
}

const firstOrder = propagateVector({
  inputs: [
    { value: 0.001, u: U },
    { value: 0, u: U },
  ],
  outputs: 2,
  model: polar,
}).outputs;

test.each([
  ["magnitude", firstOrder[0]?.value, 0.001],
  ["u of the magnitude", firstOrder[0]?.u, 0.01],
  ["u of the phase", firstOrder[1]?.u, 10],
])("Re 0.001, r 0, first order: %s", (_, actual, published) => expectWithin(actual as number, published, THOUSANDTH));
