import type { PredictedDrivelineJson, Quantity } from "@halfturn/casefile";
import { slipTravelText } from "@halfturn/words";
import type { CorrectionView } from "./correction-view.js";
import { verdictText } from "./verdict-text.js";

/** How far the slip spline moves, in words: pulled out or pushed in against as gauged. */
export function slipLine(before: PredictedDrivelineJson, after: PredictedDrivelineJson, view: CorrectionView): string {
  const { correction, labels } = view.words;
  const to = after.slipTravelMm;
  const half = to ? ` ± ${view.words.numbers.length((to.interval95[1] - to.interval95[0]) / 2)}` : "";
  const moved = correction.arrow(travel(before.slipTravelMm, view), `${travel(to, view)}${half}`);
  const verdict = after.slipVerdict === "not-gauged" ? labels.notKnown : verdictText(after.slipVerdict, view);
  return `    ${correction.slipTravel}: ${to ? `${moved}, ${verdict}` : labels.notKnown}`;
}

const travel = (quantity: Quantity, { words }: CorrectionView): string =>
  quantity === null ? words.labels.notKnown : slipTravelText(quantity.value, words);
