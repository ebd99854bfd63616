import type { Catalogue } from "./catalogue.js";
import { en } from "./en/index.js";
import { es } from "./es/index.js";
import type { Language } from "./language.js";

export const catalogues: Readonly<Record<Language, Catalogue>> = { en, es };

export const catalogueOf = (language: Language): Catalogue => catalogues[language];
