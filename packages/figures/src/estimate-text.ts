import type { Estimate } from "@halfturn/engine/analysis";
import { type Radians, radiansToDegrees } from "@halfturn/engine/units";
import type { FigureLabels } from "./figure-labels.js";

/** Intervals whose sides differ by more than this share of their width are written as an interval, not as a half width. */
const SYMMETRIC = 0.1;

export const degrees = (angle: number): number => radiansToDegrees(angle as Radians);

/** An estimate that can be drawn: there, and all of it numbers. */
export const usable = (estimate: Estimate | null | undefined): estimate is Estimate =>
  estimate !== null && estimate !== undefined && [estimate.value, estimate.low, estimate.high].every(Number.isFinite);

/** "3.10° ± 0.20°", or the interval where it is lopsided, or the words for an unknown. The sign is left out: a word says which way. */
export function angleText(estimate: Estimate | null | undefined, { numbers, notKnown }: FigureLabels, magnitude = false): string {
  if (!usable(estimate)) return notKnown;
  const turned = magnitude && estimate.value < 0 ? -1 : 1;
  const [low, high] = turned < 0 ? [-estimate.high, -estimate.low] : [estimate.low, estimate.high];
  const value = degrees(turned * estimate.value);
  const below = value - degrees(low);
  const above = degrees(high) - value;
  if (Math.abs(above - below) <= SYMMETRIC * (above + below)) return numbers.angleWithin(value, Math.max(above, below));
  return `${numbers.angle(value)} (${numbers.angleInterval(degrees(low), degrees(high))})`;
}
