import { heard } from "./heard-es.js";
import type { RecordWords } from "./record-words.js";
import { setUp } from "./set-up-es.js";
import { source } from "./source-es.js";
import { turning } from "./turning-es.js";

export const es: RecordWords = { turning, source, setUp, heard };
