import { figureLabelsOf } from "./words/labels-of.js";

/** What figures write in tests and sample pictures: the English words, as the program prints them. */
export const SAMPLE_LABELS = figureLabelsOf("en");
