import { monteCarlo, normal, propagate } from "@halfturn/engine/uncertainty";
import { test } from "vitest";
import { DRAWS, expectWithin, halfUnit, ofDeviation, ofMean } from "./expect-within.js";

// JCGM 101:2008, 9.4: Y = X1^2 + X2^2 with u = 0.005 each, uncorrelated, X2 = 0; in millionths. Published values from memory.
// Mean x1^2 + 2 u^2 and u^2(Y) = 4 u^2 x1^2 + 4 u^4 are exact. Near zero a sum of squares is biased and cannot be negative: so are residual angles.

const U = 0.005;
const model = (x: Float64Array): number => 1e6 * ((x[0] as number) ** 2 + (x[1] as number) ** 2);

/** Chi-squared with two degrees of freedom, the widest tail of the three: kurtosis 9. */
const KURTOSIS = 9;
/** Where the density is flat the shortest interval wanders: the published ends and the exact ones differ by as much (1590 against 1591, 3543 against 3547). */
const SHORTEST = [1, 2, 12] as const;

const cases = [
  { x1: 0, mean: 50, u: 50, shortest: [0, 150], firstOrder: [0, 0] },
  { x1: 0.01, mean: 150, u: 112, shortest: [0, 367], firstOrder: [100, 100] },
  { x1: 0.05, mean: 2550, u: 502, shortest: [1590, 3543], firstOrder: [2500, 500] },
] as const;

for (const [k, { x1, mean, u, shortest, firstOrder }] of cases.entries()) {
  const simulated = monteCarlo({ inputs: [normal(x1, U), normal(0, U)], model, draws: DRAWS, seed: 94 });
  const inputs = [
    { value: x1, u: U },
    { value: 0, u: U },
  ];
  const propagated = propagate({ inputs, model });
  const exactU = 1e6 * Math.sqrt(4 * U ** 2 * x1 ** 2 + 4 * U ** 4);
  const end = halfUnit(1) + (SHORTEST[k] as number);
  test.each([
    ["mean", simulated.mean, mean, ofMean(u)],
    ["exact standard deviation", simulated.standardDeviation, exactU, ofDeviation(exactU, KURTOSIS)],
    ["printed standard deviation", simulated.standardDeviation, u, halfUnit(1) + ofDeviation(u, KURTOSIS)],
    ["shortest interval, low end", simulated.shortest.low, shortest[0], end],
    ["shortest interval, high end", simulated.shortest.high, shortest[1], end],
    ["first-order estimate", propagated.value, firstOrder[0], halfUnit(1)],
    ["first-order standard uncertainty", propagated.u, firstOrder[1], halfUnit(1)],
  ])(`x1 = ${x1}: %s`, (_, actual, published, tolerance) => expectWithin(actual, published, tolerance));
}
