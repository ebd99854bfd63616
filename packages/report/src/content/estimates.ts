import { type Estimate, estimateVerdict, type Verdict } from "@halfturn/engine/analysis";
import { type Radians, radiansToDegrees } from "@halfturn/engine/units";
import type { Numbers } from "@halfturn/words";
import type { Tone } from "./blocks.js";

/** An angle in radians as degrees with two decimals. */
export const degreesText = (angle: number, numbers: Numbers): string => numbers.angle(radiansToDegrees(angle as Radians));

export const degreesInterval = ({ low, high }: Estimate, numbers: Numbers): string =>
  numbers.angleInterval(radiansToDegrees(low as Radians), radiansToDegrees(high as Radians));

const TONES: Readonly<Record<Verdict, Tone>> = {
  within: "good",
  over: "over",
  under: "under",
  uncertain: "unsure",
  "not-gauged": "none",
  withheld: "none",
};

export const toneOf = (verdict: Verdict): Tone => TONES[verdict];

/** The verdict on one number of several that a limit holds for; `withheld` goes before all. */
export const verdictAgainst = (estimate: Estimate | null, maximum: number, withheld: boolean): Verdict =>
  withheld ? "withheld" : estimateVerdict(estimate, { maximum });
