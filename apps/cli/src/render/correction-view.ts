import type { Case, WrittenChange } from "@halfturn/casefile";
import { type CorrectionNames, type CorrectionText, correctionNames, correctionText } from "@halfturn/words";
import type { View } from "./view.js";

/** A view that also knows the names of one case. */
export interface CorrectionView extends View {
  readonly document: Case;
  readonly names: CorrectionNames;
  readonly text: CorrectionText;
}

export function correctionView(document: Case, view: View): CorrectionView {
  const names = correctionNames(document, view.words);
  return { ...view, document, names, text: correctionText(view.words, names) };
}

export const changeText = (change: WrittenChange, { document, text }: CorrectionView): string =>
  text.change(change, document.adjusters?.find(({ id }) => id === change.adjuster)?.kind);

/** "Wedges: 2° pinion nose up; Plates: 6 mm lower", or that nothing changes. */
export const changesText = (changes: readonly WrittenChange[], view: CorrectionView): string =>
  changes.length === 0 ? view.words.correction.nothing : changes.map((change) => changeText(change, view)).join("; ");
