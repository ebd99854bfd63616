import { monteCarlo, propagate, rectangular, standardUncertainty } from "@halfturn/engine/uncertainty";
import { test } from "vitest";
import { DRAWS, expectWithin, halfUnit, ofDeviation, ofMean, ofQuantile } from "./expect-within.js";

// y = ln x with x rectangular on [0.1, 1.1]: NPL report DEM-ES-011, 9.2, table 9.2, as repeated in the open tests of a national laboratory's calculator.
// Mean, standard deviation and both ends have closed forms: the density of y is e^y on [ln 0.1, ln 1.1].

const input = rectangular(0.6, 0.5);
const model = (x: Float64Array): number => Math.log(x[0] as number);
const simulated = monteCarlo({ inputs: [input], model, draws: DRAWS, seed: 11 });
const propagated = propagate({ inputs: [{ value: 0.6, u: standardUncertainty(input) }], model });

const THOUSANDTH = halfUnit(0.001);
const EXACT_MEAN = 1.1 * Math.log(1.1) - 0.1 * Math.log(0.1) - 1;
const EXACT_U = 0.606227;
/** The exact standard deviation above is given to six digits. */
const SIX_DIGITS = halfUnit(1e-6);
/** Kurtosis of that density, by quadrature. */
const KURTOSIS = 2.73;
const NORMAL_95 = 1.959964;

test.each([
  ["first-order estimate", propagated.value, -0.511, THOUSANDTH],
  ["first-order standard uncertainty", propagated.u, 0.481, THOUSANDTH],
  ["first-order upper end", propagated.value + NORMAL_95 * propagated.u, 0.432, THOUSANDTH],
  ["Monte Carlo estimate, printed", simulated.mean, -0.665, THOUSANDTH + ofMean(EXACT_U)],
  ["Monte Carlo estimate, exact", simulated.mean, EXACT_MEAN, ofMean(EXACT_U)],
  ["Monte Carlo standard uncertainty, printed", simulated.standardDeviation, 0.606, THOUSANDTH + ofDeviation(EXACT_U, KURTOSIS)],
  ["Monte Carlo standard uncertainty, exact", simulated.standardDeviation, EXACT_U, SIX_DIGITS + ofDeviation(EXACT_U, KURTOSIS)],
  ["shortest interval, low end, printed", simulated.shortest.low, -1.895, THOUSANDTH + ofQuantile(0.05, 0.15)],
  ["shortest interval, low end, exact", simulated.shortest.low, Math.log(0.15), ofQuantile(0.05, 0.15)],
  ["shortest interval, high end, printed", simulated.shortest.high, 0.095, THOUSANDTH],
  ["symmetric interval, low end, exact", simulated.symmetric.low, Math.log(0.125), ofQuantile(0.025, 0.125)],
  ["symmetric interval, high end, exact", simulated.symmetric.high, Math.log(1.075), ofQuantile(0.025, 1.075)],
])("%s", (_, actual, published, tolerance) => expectWithin(actual, published, tolerance));
