import type { Axle, AxleWedge } from "../model/index.js";

/** Length of a spring pad that nobody measured, metres: common practice, no source. */
export const USUAL_PAD_LENGTH = 0.1;
/** Half width of the error of an assumed pad length, as a share of it. */
export const USUAL_PAD_SHARE = 0.5;

/** Length of the spring pad in metres, > 0: as measured, else the usual one. */
export const padLengthOf = (wedge: AxleWedge): number => wedge.padLength ?? USUAL_PAD_LENGTH;

/** Mean thickness in metres of a wedge of `angle` radians (either sign); no wedge has no thickness. */
export const meanThickness = (wedge: AxleWedge, angle: number): number =>
  angle === 0 ? 0 : wedge.thinEdge + (padLengthOf(wedge) / 2) * Math.tan(Math.abs(angle));

/**
 * How far the axle moves along the pad's normal when the wedge changes from what is fitted by `amount`: metres, + = up.
 * Away from the spring: a spring above the axle pushes it down, seen from the body. 0 where nobody said where the spring sits.
 */
export function wedgeShift(wedge: AxleWedge, amount: number, axle: Axle | null): number {
  if (!axle?.springPosition) return 0;
  const total = wedge.fitted + amount;
  // A removed wedge leaves a rest of rounding, not a wedge.
  const after = Math.abs(total) < 1e-12 ? 0 : total;
  const thicker = meanThickness(wedge, after) - meanThickness(wedge, wedge.fitted);
  return axle.springPosition === "above-axle" ? -thicker : thicker;
}
