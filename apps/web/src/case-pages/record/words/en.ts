import { heard } from "./heard-en.js";
import type { RecordWords } from "./record-words.js";
import { setUp } from "./set-up-en.js";
import { source } from "./source-en.js";
import { turning } from "./turning-en.js";

export const en: RecordWords = { turning, source, setUp, heard };
