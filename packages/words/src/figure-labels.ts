import type { Catalogue } from "./catalogue.js";
import type { FigureWords } from "./figure-words.js";
import type { Labels } from "./labels.js";
import type { Numbers } from "./numbers/numbers.js";

type Shared = Pick<
  Labels,
  | "verdicts"
  | "jointKinds"
  | "notKnown"
  | "level"
  | "drivenEndLower"
  | "sourceEndLower"
  | "supportBearing"
  | "sideView"
  | "planView"
  | "phasing"
  | "bestPhasing"
>;

/** All the words that the figures ask for. */
export interface FigureCatalogue extends FigureWords, Shared {
  readonly numbers: Numbers;
  readonly notGauged: string;
  readonly drivenEnd: string;
}

/** The words for figures in the language of a catalogue. */
export const figureLabelsOf = ({ numbers, labels, figures }: Catalogue): FigureCatalogue => ({
  ...labels,
  ...figures,
  numbers,
  notGauged: labels.verdicts["not-gauged"],
  drivenEnd: labels.drivenAcceleration,
});
