import { arcsine, propagate, rectangular, standardUncertainty } from "@halfturn/engine/uncertainty";
import { expect, test } from "vitest";
import { expectWithin, halfUnit } from "./expect-within.js";

// JCGM 100:2008 (GUM), annex H.1: calibration of a gauge block by comparison, in nanometres and degrees Celsius.
// Inputs, length and components as printed there and repeated in the documentation of a national institute's open calculator; u_c = 32 nm likewise in two places.

const STANDARD = 50_000_623;
const EXPANSION = 11.5e-6;
const NANOMETRE = halfUnit(1);
const TENTH = halfUnit(0.1);
const HUNDREDTH = halfUnit(0.01);

const of = (distribution: ReturnType<typeof rectangular>) => ({ value: distribution.value, u: standardUncertainty(distribution) });

const temperature = [{ value: -0.1, u: 0.2 }, of(arcsine(0, 0.5))] as const;
const result = propagate({
  inputs: [
    { value: STANDARD, u: 25 },
    { value: 215, u: 5.8 }, // mean of five differences
    { value: 0, u: 3.9 }, // random effects of the comparator
    { value: 0, u: 6.7 }, // its systematic effects
    of(rectangular(0, 1e-6)), // difference of the expansion coefficients
    of(rectangular(0, 0.05)), // difference of the temperatures
    of(rectangular(EXPANSION, 2e-6)),
    ...temperature,
  ],
  model: (x) => {
    const [standard, mean, random, systematic, expansionDifference, temperatureDifference, expansion, bench, cycle] = x as unknown as Nine;
    return standard + mean + random + systematic - standard * (expansionDifference * (bench + cycle) + expansion * temperatureDifference);
  },
});
type Nine = [number, number, number, number, number, number, number, number, number];

const component = (first: number, last = first): number =>
  result.u * Math.sqrt(result.contributions.slice(first, last + 1).reduce((sum, share) => sum + share, 0));

test.each([
  ["length", result.value, 50_000_838, NANOMETRE],
  ["combined standard uncertainty", result.u, 32, NANOMETRE],
  ["component of the standard", component(0), 25, NANOMETRE],
  ["component of the measured difference", component(1, 3), 9.7, TENTH],
  ["component of the difference of expansion coefficients", component(4), 2.9, TENTH],
  ["component of the difference of temperatures", component(5), 16.6, TENTH],
  ["uncertainty of the bench temperature", Math.hypot(temperature[0].u, temperature[1].u), 0.41, HUNDREDTH],
])("%s", (_, actual, published, tolerance) => expectWithin(actual, published, tolerance));

test("expansion and temperature have no first-order share, for their factors are estimated as zero", () => {
  expect(result.contributions.slice(6).every((share) => Math.abs(share) < Number.EPSILON)).toBe(true);
});
