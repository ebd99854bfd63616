import { expect, test } from "vitest";
import { catalogueStrings } from "./catalogue-strings.test-support.js";
import { catalogueOf } from "./catalogues.js";
import { LANGUAGES } from "./language.js";
import { UNIT_SYSTEMS } from "./units.js";

/** A number that a line may end with, its unit on the next one. */
const BREAKABLE = /\d (?:%|mm|km\/h|mph|ft|rpm|Hz|s|m|MB|m\/s²|rad\/s²)(?![\p{L}\d/²])/u;
/** What somebody may type stands there as it is typed. */
const TYPED = /"[^"]*"|“[^”]*”|\([^)]*bits\)/g;

test.each(LANGUAGES.flatMap((language) => UNIT_SYSTEMS.map((units) => [language, units] as const)))(
  "no sentence parts a number from its unit (%s, %s)",
  (language, units) => {
    const said = [...catalogueStrings(catalogueOf(language, units))].map(([key, text]) => [key, text.replaceAll(TYPED, "")]);
    expect(said.filter(([, text = ""]) => BREAKABLE.test(text))).toEqual([]);
  },
);
