import type { Numbers } from "./numbers/numbers.js";

/** Nothing that was measured is certain: beyond these a probability is said as a bound. */
const [NEARLY_NONE, NEARLY_ALL] = [0.005, 0.995];

/** Whether a probability is to be said as a bound: above 99 %, below 1 %; null: as it is. */
export const probabilityBound = (probability: number): "above" | "below" | null =>
  probability >= NEARLY_ALL ? "above" : probability < NEARLY_NONE ? "below" : null;

/** Between a sign and its number a line must not break. */
const TOGETHER = "\u00a0";

/** "57%", "> 99%", "< 1%". */
export function probabilityText(probability: number, numbers: Numbers): string {
  const bound = probabilityBound(probability);
  if (bound === null) return numbers.share(probability);
  return bound === "above" ? `>${TOGETHER}${numbers.share(0.99)}` : `<${TOGETHER}${numbers.share(0.01)}`;
}

/** A probability that something left out of account can only make lower: "≤ 57%". Against "< 1%", which is a bound itself, that says nothing more. */
export const highestProbabilityText = (probability: number, numbers: Numbers): string =>
  probabilityBound(probability) === "below" ? probabilityText(probability, numbers) : `≤${TOGETHER}${numbers.share(probability)}`;
