import type { TurningWords } from "./turning-words.js";

/** What the Record page says. */
export interface RecordWords {
  readonly turning: TurningWords;
}
