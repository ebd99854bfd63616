import type { Problem, ProblemCode, ProblemParams } from "@halfturn/casefile";
import type { FindingCode, Severity } from "@halfturn/engine/findings";
import type { Cautions } from "./cautions.js";
import type { CorrectionWords } from "./correction-words.js";
import type { Explanations } from "./explanations.js";
import type { FindingReader } from "./finding-reader.js";
import type { Labels } from "./labels.js";
import type { Language } from "./language.js";
import type { Numbers } from "./numbers/numbers.js";
import type { OrderWords } from "./order-words.js";
import type { Phrases } from "./phrases.js";
import { placeInWords } from "./place-in-words.js";
import type { RecordingWords } from "./recording-words.js";
import type { Terminal } from "./terminal.js";
import type { VibrationWords } from "./vibration-words.js";

/** What a finding means in the bay, and exactly what to do next. */
export interface FindingWords {
  readonly title: string;
  readonly says: (of: FindingReader) => string;
  readonly doNext: (of: FindingReader) => string;
}

export type FindingCatalogue = { readonly [Code in FindingCode]: FindingWords };

/** One line each: what is wrong at the place, and what to write instead. */
export type ProblemCatalogue = { readonly [Code in ProblemCode]: (params: ProblemParams[Code], numbers: Numbers) => string };

/** Every sentence and label of one language. */
export interface Catalogue {
  readonly language: Language;
  readonly numbers: Numbers;
  readonly labels: Labels;
  readonly severities: { readonly [S in Severity]: string };
  readonly findings: FindingCatalogue;
  readonly problems: ProblemCatalogue;
  /** What a problem without a place is about. */
  readonly wholeFile: string;
  readonly phrases: Phrases;
  readonly orders: OrderWords;
  readonly explanations: Explanations;
  readonly cautions: Cautions;
  readonly correction: CorrectionWords;
  readonly recording: RecordingWords;
  readonly vibration: VibrationWords;
  readonly terminal: Terminal;
}

/** "gauging[0].readings[2].deg (reading 3 of gauging 1): ...": place as the file spells it and in words, what is wrong, remedy, on one line. */
export function problemText(catalogue: Catalogue, problem: Problem): string {
  // The union's code and params belong together; the compiler cannot follow that through an index.
  const words = catalogue.problems[problem.code] as (params: Problem["params"], numbers: Numbers) => string;
  const inWords = placeInWords(catalogue.phrases, problem.path);
  const place = problem.path === "" ? catalogue.wholeFile : inWords === null ? problem.path : `${problem.path} (${inWords})`;
  return `${place}: ${words(problem.params, catalogue.numbers)}`.replaceAll(/[^\S\u00a0]+/g, " ");
}
