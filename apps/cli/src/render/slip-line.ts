import type { PredictedDrivelineJson, Quantity } from "@halfturn/casefile";
import type { CorrectionView } from "./correction-view.js";
import { verdictText } from "./verdict-text.js";

/** Below half of the last digit shown the spline stands where it stood. */
const STILL_MM = 0.05;

/** How far the slip spline moves, in words: pulled out or pushed in against as gauged. */
export function slipLine(before: PredictedDrivelineJson, after: PredictedDrivelineJson, view: CorrectionView): string {
  const { correction, labels } = view.words;
  const to = after.slipTravelMm;
  const half = to ? ` ± ${view.words.numbers.length((to.interval95[1] - to.interval95[0]) / 2)}` : "";
  const moved = correction.arrow(travel(before.slipTravelMm, view), `${travel(to, view)}${half}`);
  const verdict = after.slipVerdict === "not-gauged" ? labels.notKnown : verdictText(after.slipVerdict, view);
  return `    ${correction.slipTravel}: ${to ? `${moved}, ${verdict}` : labels.notKnown}`;
}

function travel(quantity: Quantity, { words: { correction, labels, numbers } }: CorrectionView): string {
  if (quantity === null) return labels.notKnown;
  const size = numbers.length(Math.abs(quantity.value));
  if (Math.abs(quantity.value) < STILL_MM) return numbers.length(0);
  return quantity.value > 0 ? correction.pulledOut(size) : correction.pushedIn(size);
}
