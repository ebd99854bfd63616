import type { HeardWords } from "./heard-words.js";
import type { SetUpWords } from "./set-up-words.js";
import type { SourceWords } from "./source-words.js";
import type { TurningWords } from "./turning-words.js";

/** What the Record page says. */
export interface RecordWords {
  readonly turning: TurningWords;
  readonly source: SourceWords;
  readonly setUp: SetUpWords;
  readonly heard: HeardWords;
}
