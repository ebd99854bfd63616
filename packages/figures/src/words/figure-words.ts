import type { FigureLabels } from "../figure-labels.js";

/** The words that only figures need; the rest comes from the catalogue of the language. */
export type FigureWords = Omit<
  FigureLabels,
  | "numbers"
  | "verdicts"
  | "jointKinds"
  | "notKnown"
  | "level"
  | "drivenEndLower"
  | "sourceEndLower"
  | "supportBearing"
  | "sideView"
  | "planView"
>;
