import type { Spectrum } from "./spectrum.js";

/** Wk: vertical on a seat, or the floor. Wd: lengthways and sideways on a seat. */
export type Weighting = "Wk" | "Wd";

/** Corner frequencies in Hz and resonance factors of ISO 2631-1:1997, Annex A, table A.1. */
interface Corners {
  readonly highPass: number;
  readonly lowPass: number;
  readonly transition: { readonly from: number; readonly to: number; readonly q: number };
  readonly step: { readonly from: number; readonly to: number; readonly q: number } | null;
}

/** Wk read in an open implementation of the filters; Wd from memory, checked against the table of the standard. */
const CORNERS: Readonly<Record<Weighting, Corners>> = {
  Wk: { highPass: 0.4, lowPass: 100, transition: { from: 12.5, to: 12.5, q: 0.63 }, step: { from: 2.37, to: 3.35, q: 0.91 } },
  Wd: { highPass: 0.4, lowPass: 100, transition: { from: 2, to: 2, q: 0.63 }, step: null },
};

/** |1 - x^2 + i x / q| of a second-order factor at x = f / corner. */
const secondOrder = (x: number, q: number): number => Math.hypot(1 - x * x, x / q);

/**
 * How much of an acceleration at a frequency (Hz, >= 0) a person feels: the magnitude of the filter, dimensionless, 0 at 0 Hz.
 * Source: ISO 2631-1:1997, Annex A: band limits of two poles (Butterworth), acceleration-velocity transition, upward step for Wk.
 * The filter is authoritative: table 3 prints 0.212 for Wd at 10 Hz, where the filter gives 0.2017; every other entry follows the filter.
 */
export function weightingFactor(weighting: Weighting, frequency: number): number {
  const { highPass, lowPass, transition, step } = CORNERS[weighting];
  const high = (frequency / highPass) ** 2 / secondOrder(frequency / highPass, Math.SQRT1_2);
  const low = 1 / secondOrder(frequency / lowPass, Math.SQRT1_2);
  const velocity = Math.hypot(1, frequency / transition.from) / secondOrder(frequency / transition.to, transition.q);
  if (step === null) return high * low * velocity;
  const rise = (step.from / step.to) ** 2 * (secondOrder(frequency / step.from, step.q) / secondOrder(frequency / step.to, step.q));
  return high * low * velocity * rise;
}

/** Weighted rms acceleration, m/s^2, of tones or one-third-octave bands given as frequency (Hz) and rms (m/s^2). Source: ISO 2631-1:1997, 6.4.2, equation 9. */
export const weightedRms = (weighting: Weighting, bands: readonly { readonly frequency: number; readonly rms: number }[]): number =>
  Math.sqrt(bands.reduce((sum, { frequency, rms }) => sum + (weightingFactor(weighting, frequency) * rms) ** 2, 0));

/** Weighted rms acceleration, m/s^2, of a whole spectrum in m/s^2: the filter applied to the densities, so that no band edges matter. */
export function weightedRmsOfSpectrum(weighting: Weighting, spectrum: Spectrum): number {
  let meanSquare = 0;
  for (const [k, density] of spectrum.density.entries())
    meanSquare += weightingFactor(weighting, k * spectrum.lineSpacing) ** 2 * density * spectrum.lineSpacing;
  return Math.sqrt(meanSquare);
}

/** Total of the three directions on a seat pan, m/s^2, all factors 1 as for comfort. Source: ISO 2631-1:1997, 6.5 and 8.2.2.1. */
export const vibrationTotal = (x: number, y: number, z: number): number => Math.hypot(x, y, z);

export type Comfort =
  | "comfort.not-uncomfortable"
  | "comfort.a-little-uncomfortable"
  | "comfort.fairly-uncomfortable"
  | "comfort.uncomfortable"
  | "comfort.very-uncomfortable"
  | "comfort.extremely-uncomfortable";

/** The ranges overlap by design: the scale is a likely reaction, not a limit. */
const COMFORT: readonly { readonly comfort: Comfort; readonly from: number; readonly to: number }[] = [
  { comfort: "comfort.not-uncomfortable", from: 0, to: 0.315 },
  { comfort: "comfort.a-little-uncomfortable", from: 0.315, to: 0.63 },
  { comfort: "comfort.fairly-uncomfortable", from: 0.5, to: 1 },
  { comfort: "comfort.uncomfortable", from: 0.8, to: 1.6 },
  { comfort: "comfort.very-uncomfortable", from: 1.25, to: 2.5 },
  { comfort: "comfort.extremely-uncomfortable", from: 2, to: Number.POSITIVE_INFINITY },
];

/**
 * Likely reactions to a total of so many m/s^2 (>= 0), one or two since the ranges overlap, mildest first.
 * A measurement on the floor or the seat track is not one on the seat pan: the rating is then only indicative. Source: ISO 2631-1:1997, Annex C.2.3 (from memory).
 */
export const comfortOf = (total: number): readonly Comfort[] =>
  COMFORT.filter(({ from, to }) => total >= from && total < to).map(({ comfort }) => comfort);
