import type { ByLanguage } from "../../../words/use-words.js";
import { en } from "./en.js";
import { es } from "./es.js";
import type { GaugeWords } from "./gauge-words.js";

export const gaugeWords: ByLanguage<GaugeWords> = { en, es };
