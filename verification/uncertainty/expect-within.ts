import { expect } from "vitest";

/** Half of one unit in the last printed digit: what a rounded published number can still mean. */
export const halfUnit = (lastDigit: number): number => lastDigit / 2;

/** Four standard errors of a Monte Carlo run: a fixed seed passes or fails for good, a wrong method fails. */
export const STANDARD_ERRORS = 4;

/** Trials of one check: JCGM 101:2008, 7.2.2 advises 10^4/(1 - p), which is a million for the 99 % interval and more than enough for 95 %. */
export const DRAWS = 1_000_000;

/** The deviation allowed for a mean over the trials. */
export const ofMean = (u: number): number => (STANDARD_ERRORS * u) / Math.sqrt(DRAWS);

/** The deviation allowed for a standard deviation over the trials, for a shape of the given kurtosis (3 for a normal). */
export const ofDeviation = (u: number, kurtosis = 3): number => (STANDARD_ERRORS * u * Math.sqrt((kurtosis - 1) / 4)) / Math.sqrt(DRAWS);

/** The deviation allowed for the p-quantile where the density is the given one (JCGM 101:2008, 7.7; asymptotic standard error of an order statistic). */
export const ofQuantile = (p: number, density: number): number => (STANDARD_ERRORS * Math.sqrt(p * (1 - p))) / density / Math.sqrt(DRAWS);

export function expectWithin(actual: number, published: number, tolerance: number): void {
  expect(Math.abs(actual - published), `${actual} where ${published} +/- ${tolerance} is published`).toBeLessThanOrEqual(tolerance);
}
