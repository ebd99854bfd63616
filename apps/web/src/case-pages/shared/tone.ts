import type { Verdict } from "@halfturn/engine/analysis";
import type { Tone } from "../../controls/verdict-mark.js";

const TONES: Readonly<Record<Verdict, Tone>> = {
  within: "good",
  over: "bad",
  under: "low",
  uncertain: "doubt",
  "not-gauged": "none",
  withheld: "none",
};

/** With which sign and colour a verdict is shown. */
export const toneOf = (verdict: Verdict): Tone => TONES[verdict];
