import type { RecordWords } from "./record-words.js";
import { turning } from "./turning-en.js";

export const en: RecordWords = { turning };
