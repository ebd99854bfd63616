import type { Language } from "@halfturn/words";
import { en } from "./en.js";
import { es } from "./es.js";
import type { ReportWords } from "./report-words.js";

export type { ReportWords } from "./report-words.js";

/** The report's own words, one set for every language of the catalogue. */
export const reportWords: Readonly<Record<Language, ReportWords>> = { en, es };
