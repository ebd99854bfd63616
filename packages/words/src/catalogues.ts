import type { Catalogue } from "./catalogue.js";
import { en } from "./en/index.js";
import { es } from "./es/index.js";
import type { Language } from "./language.js";
import { numbersOf } from "./numbers/numbers.js";
import type { Units } from "./units.js";

const cataloguesIn = (units: Units): Readonly<Record<Language, Catalogue>> => ({
  en: en(numbersOf("en", units)),
  es: es(numbersOf("es", units)),
});

/** Every catalogue in metric units. */
export const catalogues = cataloguesIn("metric");

const inches = cataloguesIn("us");

/** The words of a language, with lengths, distances and road speeds in the units of the reader. */
export const catalogueOf = (language: Language, units: Units = "metric"): Catalogue => (units === "us" ? inches : catalogues)[language];
