import type { ByLanguage } from "../../../words/use-words.js";
import { en } from "./en.js";
import { es } from "./es.js";
import type { RecordWords } from "./record-words.js";

export const recordWords: ByLanguage<RecordWords> = { en, es };
