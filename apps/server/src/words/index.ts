import type { Language } from "@halfturn/words";
import { en } from "./en.js";
import { es } from "./es.js";
import type { ServerWords } from "./server-words.js";

export const serverWords: Readonly<Record<Language, ServerWords>> = { en, es };
export type { RefusalCode, RefusalParams, ServerWords } from "./server-words.js";
