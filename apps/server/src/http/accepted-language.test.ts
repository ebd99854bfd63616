import { expect, test } from "vitest";
import { acceptedLanguage } from "./accepted-language.js";

test.each([
  [undefined, "en"],
  ["", "en"],
  ["es", "es"],
  ["es-MX,es;q=0.9,en;q=0.8", "es"],
  ["fr, de;q=0.9, es;q=0.3", "es"],
  ["en;q=0.2, es;q=0.7", "es"],
  ["es;q=0, en", "en"],
  ["de", "en"],
  [";;;,,q=", "en"],
  ["es;q=x", "en"],
])("%j is answered in %s", (header, language) => {
  expect(acceptedLanguage(header)).toBe(language);
});
