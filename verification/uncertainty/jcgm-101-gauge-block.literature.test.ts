import { arcsine, curvilinearTrapezoid, monteCarlo, normal, rectangular, scaledT } from "@halfturn/engine/uncertainty";
import { test } from "vitest";
import { DRAWS, expectWithin, halfUnit, ofDeviation, ofMean, ofQuantile } from "./expect-within.js";

// JCGM 101:2008, 9.5: the gauge block of the GUM's annex H.1 with every shape of input the standard has; in nanometres. Published values from memory.

const STANDARD = 50_000_623;
const simulated = monteCarlo({
  inputs: [
    scaledT(STANDARD, 25, 18),
    scaledT(215, 6, 24),
    scaledT(0, 4, 5),
    scaledT(0, 7, 8),
    rectangular(11.5e-6, 2e-6),
    normal(-0.1, 0.2),
    arcsine(0, 0.5),
    curvilinearTrapezoid(0, 1e-6, 0.1e-6),
    curvilinearTrapezoid(0, 0.05, 0.025),
  ],
  model: (x) => {
    const [standard, mean, random, systematic, expansion, bench, cycle, expansionDifference, temperatureDifference] = x as unknown as Nine;
    const corrected = standard + mean + random + systematic - 50_000_000;
    return corrected - standard * (expansionDifference * (bench + cycle) + expansion * temperatureDifference);
  },
  draws: DRAWS,
  seed: 95,
  coverage: 0.99,
});
type Nine = [number, number, number, number, number, number, number, number, number];

const PRINTED = halfUnit(1);
const U = 36;
/** Density of a normal of that u at its 99.5 % quantile; the tails of the sum are a little heavier, which the standard error may ignore. */
const DENSITY_AT_END = 0.01446 / U;

test.each([
  ["length above 50 mm", simulated.mean, 838, PRINTED + ofMean(U)],
  ["standard uncertainty", simulated.standardDeviation, U, PRINTED + ofDeviation(U)],
  ["99 % interval, low end", simulated.symmetric.low, 745, PRINTED + ofQuantile(0.005, DENSITY_AT_END)],
  ["99 % interval, high end", simulated.symmetric.high, 932, PRINTED + ofQuantile(0.005, DENSITY_AT_END)],
])("%s", (_, actual, published, tolerance) => expectWithin(actual, published, tolerance));
