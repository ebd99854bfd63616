import type { Estimate } from "@halfturn/engine/analysis";
import { type Radians, radiansToDegrees } from "@halfturn/engine/units";
import type { Numbers } from "@halfturn/words";

/** An interval whose value lies further from its middle than this share of its width is written out instead of as ±. */
const LOPSIDED = 0.1;

export const degreesOf = (angle: number): number => radiansToDegrees(angle as Radians);

export const angleOf = (angle: number, numbers: Numbers): string => numbers.angle(degreesOf(angle));

/** The size of an angle in radians: "3.10°", or what stands for an unknown one. */
export const valueText = (estimate: Estimate | null, numbers: Numbers, unknown: string): string =>
  estimate ? angleOf(Math.abs(estimate.value), numbers) : unknown;

/** How far it may be out: "± 0.21°", or the interval where it is lopsided; nothing for an unknown one. */
export function intervalText(estimate: Estimate | null, numbers: Numbers): string {
  if (!estimate) return "";
  const { value, low, high } = estimate;
  return Math.abs((high + low) / 2 - value) > LOPSIDED * (high - low)
    ? numbers.angleInterval(degreesOf(low), degreesOf(high))
    : `± ${angleOf((high - low) / 2, numbers)}`;
}
