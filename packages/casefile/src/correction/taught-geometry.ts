import { type BeforeAfter, judgePrediction, type LearnedGeometry, type LookCode, learnGeometry } from "@halfturn/engine/correction";
import type { CorrectionSettings } from "../convert/to-correction-input.js";
import type { Case } from "../schema/case.js";
import { beforeAfterPairs } from "./before-after-pairs.js";

/** What the corrections of a case that were gauged again teach about its lengths and arms. */
export type TaughtGeometry =
  /** No correction was gauged again. */
  | { readonly kind: "nothing" }
  | { readonly kind: "learned"; readonly geometry: LearnedGeometry /** Their places in `corrections`. */; readonly from: readonly number[] }
  /** What was gauged after does not fit what was made, so that nothing may be concluded from it. */
  | {
      readonly kind: "misfit";
      readonly from: readonly number[] /** What to look at on the vehicle, likeliest first. */;
      readonly lookAt: readonly LookCode[];
    };

/** A misfit of so many standard deviations of chi-squared (mean n, variance 2 n) is no chance: one case in some hundreds. */
const LARGEST_DEVIATION = 3;

/** Learns from every pair of gaugings before and after; a pair that contradicts its own prediction (a wedge turned round, another ride height) teaches nothing. */
export function taughtGeometry(document: Case, settings: CorrectionSettings): TaughtGeometry {
  const pairs = beforeAfterPairs(document, settings);
  if (pairs.length === 0) return { kind: "nothing" };
  const from = pairs.map(({ correction }) => correction);
  const learned = learnGeometry(pairs);
  const misfit = (): TaughtGeometry => ({ kind: "misfit", from, lookAt: [...new Set(pairs.flatMap(looksOf))] });
  if (!learned.ok) return misfit();
  const { chiSquared, readings } = learned.value;
  const fits = chiSquared <= readings + LARGEST_DEVIATION * Math.sqrt(2 * readings);
  return fits ? { kind: "learned", geometry: learned.value, from } : misfit();
}

function looksOf(pair: BeforeAfter): readonly LookCode[] {
  const judged = judgePrediction(pair);
  return judged.ok ? judged.value.lookAt : [];
}
