import { monteCarlo, normal, propagate, rectangular, standardUncertainty } from "@halfturn/engine/uncertainty";
import { test } from "vitest";
import { DRAWS, expectWithin, halfUnit, ofDeviation, ofMean } from "./expect-within.js";

// JCGM 101:2008, 9.3: mass calibration in air, in milligrams and kilograms per cubic metre. Inputs and results from memory.
// The air density enters only through its spread, so that first-order propagation misses 29 % of the standard uncertainty: the reason to simulate.

const inputs = [normal(100_000, 0.05), normal(1.234, 0.02), rectangular(1.2, 0.1), rectangular(8000, 1000), rectangular(8000, 50)];
const model = (x: Float64Array): number => {
  const [reference, difference, air, weight, referenceDensity] = x as unknown as [number, number, number, number, number];
  return (reference + difference) * (1 + (air - 1.2) * (1 / weight - 1 / referenceDensity)) - 100_000;
};

const simulated = monteCarlo({ inputs, model, draws: DRAWS, seed: 93 });
const propagated = propagate({ inputs: inputs.map((input) => ({ value: input.value, u: standardUncertainty(input) })), model });

const FOURTH_DIGIT = halfUnit(0.0001);
/** The shortest interval slides almost freely along a flat-topped density: two runs of a million agree to this. */
const SHORTEST = 0.002;

test.each([
  ["Monte Carlo estimate", simulated.mean, 1.234, FOURTH_DIGIT + ofMean(0.0754)],
  ["Monte Carlo standard uncertainty", simulated.standardDeviation, 0.0754, FOURTH_DIGIT + ofDeviation(0.0754)],
  ["shortest interval, low end", simulated.shortest.low, 1.0834, SHORTEST],
  ["shortest interval, high end", simulated.shortest.high, 1.3825, SHORTEST],
  ["first-order estimate", propagated.value, 1.234, FOURTH_DIGIT],
  ["first-order standard uncertainty", propagated.u, 0.0539, FOURTH_DIGIT],
])("%s", (_, actual, published, tolerance) => expectWithin(actual, published, tolerance));
