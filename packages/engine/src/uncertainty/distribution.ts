import { randomGamma } from "d3-random";
import { type Deviates, normalDeviates } from "./random.js";

/** An input quantity known by its shape. `value` is its best estimate; every number is in the unit of the quantity. */
export type Distribution =
  | { readonly shape: "normal"; readonly value: number; readonly u: number }
  | { readonly shape: "rectangular"; readonly value: number; readonly halfWidth: number }
  | { readonly shape: "arcsine"; readonly value: number; readonly halfWidth: number }
  | { readonly shape: "curvilinear-trapezoid"; readonly value: number; readonly halfWidth: number; readonly widthInexactness: number }
  | { readonly shape: "t"; readonly value: number; readonly scale: number; readonly degreesOfFreedom: number };

/** Normal, by its standard uncertainty. */
export const normal = (value: number, u: number): Distribution => ({ shape: "normal", value, u });

/** Rectangular within value +/- halfWidth: a stated accuracy, or half a step of a display. */
export const rectangular = (value: number, halfWidth: number): Distribution => ({ shape: "rectangular", value, halfWidth });

/** U-shaped within value +/- halfWidth: something that swings as a sine, looked at at any moment. */
export const arcsine = (value: number, halfWidth: number): Distribution => ({ shape: "arcsine", value, halfWidth });

/** Rectangular whose half width is itself known only within +/- widthInexactness (<= halfWidth). */
export const curvilinearTrapezoid = (value: number, halfWidth: number, widthInexactness: number): Distribution => ({
  shape: "curvilinear-trapezoid",
  value,
  halfWidth,
  widthInexactness,
});

/** Scaled and shifted t. `scale` is the s/sqrt(n) of n repeats, not the standard uncertainty, which is greater by sqrt(nu/(nu - 2)). */
export const scaledT = (value: number, scale: number, degreesOfFreedom: number): Distribution => ({
  shape: "t",
  value,
  scale,
  degreesOfFreedom,
});

/**
 * Standard uncertainty of an input quantity, >= 0, in its unit; infinite for a t with two degrees of freedom or fewer.
 * Source: JCGM 101:2008, 6.4 and table 1 (rectangular a/sqrt 3, arcsine a/sqrt 2, variance of the curvilinear trapezoid a^2/3 + d^2/9, of the t nu/(nu - 2)).
 */
export function standardUncertainty(distribution: Distribution): number {
  switch (distribution.shape) {
    case "normal":
      return distribution.u;
    case "rectangular":
      return distribution.halfWidth / Math.sqrt(3);
    case "arcsine":
      return distribution.halfWidth / Math.SQRT2;
    case "curvilinear-trapezoid":
      return Math.hypot(distribution.halfWidth / Math.sqrt(3), distribution.widthInexactness / 3);
    case "t": {
      const { scale, degreesOfFreedom } = distribution;
      return degreesOfFreedom > 2 ? scale * Math.sqrt(degreesOfFreedom / (degreesOfFreedom - 2)) : Number.POSITIVE_INFINITY;
    }
  }
}

/**
 * A source of draws of an input quantity. uniform: deviates in [0, 1).
 * standardNormal: normal deviates made from the same source; hand the same one to all samplers, so that no half of a pair is thrown away.
 * Source: JCGM 101:2008, 6.4.2 (rectangular), 6.4.3 (curvilinear trapezoid), 6.4.6 (arcsine), 6.4.7 (normal), 6.4.9 (t); the t's chi-squared from d3-random's gamma deviates.
 */
export function samplerOf(distribution: Distribution, uniform: Deviates, standardNormal: Deviates = normalDeviates(uniform)): Deviates {
  const { value } = distribution;
  switch (distribution.shape) {
    case "normal": {
      const { u } = distribution;
      return () => value + u * standardNormal();
    }
    case "rectangular": {
      const low = value - distribution.halfWidth;
      const width = 2 * distribution.halfWidth;
      return () => low + width * uniform();
    }
    case "arcsine": {
      const { halfWidth } = distribution;
      return () => value + halfWidth * Math.sin(2 * Math.PI * uniform());
    }
    case "curvilinear-trapezoid": {
      const { halfWidth, widthInexactness } = distribution;
      return () => {
        const drawnHalfWidth = halfWidth + widthInexactness * (1 - 2 * uniform());
        return value + drawnHalfWidth * (2 * uniform() - 1);
      };
    }
    case "t": {
      const { scale, degreesOfFreedom } = distribution;
      const halfChiSquared = randomGamma.source(uniform)(degreesOfFreedom / 2, 1);
      return () => value + scale * standardNormal() * Math.sqrt(degreesOfFreedom / (2 * halfChiSquared()));
    }
  }
}
