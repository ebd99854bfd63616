import { describe, expect, it } from "vitest";
import { languageOf } from "./language.js";

describe("languageOf", () => {
  it("takes the language of a locale, English where there is no catalogue", () => {
    expect(["es_MX.UTF-8", "es-AR", "ES", "en_GB.UTF-8", "de_DE.UTF-8", "C.UTF-8", "C", "", undefined].map(languageOf)).toEqual([
      "es",
      "es",
      "es",
      "en",
      "en",
      "en",
      "en",
      "en",
      "en",
    ]);
  });
});
