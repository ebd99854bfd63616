import type { RecordWords } from "./record-words.js";
import { turning } from "./turning-es.js";

export const es: RecordWords = { turning };
