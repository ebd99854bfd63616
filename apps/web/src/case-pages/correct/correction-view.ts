import { type Case, fileUnitOf, writtenAmount } from "@halfturn/casefile";
import type { Change } from "@halfturn/engine/correction";
import {
  type Catalogue,
  type CorrectionNames,
  type CorrectionText,
  catalogueOf,
  correctionNames,
  correctionText,
  type Language,
  type Units,
} from "@halfturn/words";

/** The words of corrections with the names of one case in them. */
export interface CorrectionView {
  readonly document: Case;
  readonly catalogue: Catalogue;
  readonly names: CorrectionNames;
  readonly text: CorrectionText;
  /** "Spring pad wedges: 2° pinion nose up" for each change. */
  readonly changes: (changes: readonly Change[]) => readonly string[];
}

export function correctionViewOf(document: Case, language: Language, units: Units): CorrectionView {
  const catalogue = catalogueOf(language, units);
  const names = correctionNames(document, catalogue);
  const text = correctionText(catalogue, names);
  const kindOf = (id: string) => document.adjusters?.find((adjuster) => adjuster.id === id)?.kind;
  return {
    document,
    catalogue,
    names,
    text,
    changes: (changes) =>
      changes.map(({ adjusterId, amount }) => {
        const kind = kindOf(adjusterId);
        const unit = fileUnitOf(kind ?? "mount-spacer");
        return text.change({ adjuster: adjusterId, amount: writtenAmount(amount, unit), unit }, kind);
      }),
  };
}
