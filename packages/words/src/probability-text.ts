import type { Numbers } from "./numbers/numbers.js";

/** Nothing that was measured is certain: beyond these a probability is said as a bound. */
const [NEARLY_NONE, NEARLY_ALL] = [0.005, 0.995];

/** "57%", "> 99%", "< 1%". */
export function probabilityText(probability: number, numbers: Numbers): string {
  if (probability >= NEARLY_ALL) return `> ${numbers.share(0.99)}`;
  return probability < NEARLY_NONE ? `< ${numbers.share(0.01)}` : numbers.share(probability);
}
