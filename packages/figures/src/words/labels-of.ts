import { catalogueOf, type Language, type Units } from "@halfturn/words";
import type { FigureLabels } from "../figure-labels.js";
import { en } from "./en.js";
import { es } from "./es.js";
import type { FigureWords } from "./figure-words.js";

const FIGURE_WORDS: Readonly<Record<Language, FigureWords>> = { en, es };

/** Everything a figure writes, in one language and the units of the reader: shared labels and numbers from the catalogue, the rest from here. */
export function figureLabelsOf(language: Language, units: Units = "metric"): FigureLabels {
  const { labels, numbers } = catalogueOf(language, units);
  const { verdicts, jointKinds, notKnown, level, drivenEndLower, sourceEndLower, supportBearing, sideView, planView } = labels;
  const shared = { verdicts, jointKinds, notKnown, level, drivenEndLower, sourceEndLower, supportBearing, sideView, planView };
  return { ...FIGURE_WORDS[language], ...shared, numbers };
}
