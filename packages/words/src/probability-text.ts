import type { Numbers } from "./numbers/numbers.js";

/** Nothing that was measured is certain: beyond these a probability is said as a bound. */
const [NEARLY_NONE, NEARLY_ALL] = [0.005, 0.995];

/** Whether a probability is to be said as a bound: above 99 %, below 1 %; null: as it is. */
export const probabilityBound = (probability: number): "above" | "below" | null =>
  probability >= NEARLY_ALL ? "above" : probability < NEARLY_NONE ? "below" : null;

/** "57%", "> 99%", "< 1%". */
export function probabilityText(probability: number, numbers: Numbers): string {
  const bound = probabilityBound(probability);
  return bound === null ? numbers.share(probability) : bound === "above" ? `> ${numbers.share(0.99)}` : `< ${numbers.share(0.01)}`;
}
