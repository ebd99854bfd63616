import { expect, test } from "vitest";
import { en } from "./en.js";
import { es } from "./es.js";

/** Every sentence by its key; a function stands for itself with its gaps filled. */
const sentences = (words: object, at = ""): readonly (readonly [key: string, text: unknown])[] =>
  Object.entries(words).flatMap(([key, value]) =>
    typeof value === "object"
      ? sentences(value, `${at}${key}.`)
      : [[`${at}${key}`, typeof value === "function" ? value("5.6", "7.8") : value] as const],
  );

test("both languages say the same things, and none says nothing", () => {
  const [english, spanish] = [sentences(en), sentences(es)];
  expect(spanish.map(([key]) => key)).toEqual(english.map(([key]) => key));
  for (const [key, text] of [...english, ...spanish]) expect(text, key).toMatch(/\S/);
});

test("what fills a gap in a sentence appears in it", () => {
  for (const words of [en, es]) {
    expect(words.turning.there("32\u00a0Hz", "85\u00a0km/h")).toMatch(/32\u00a0Hz.*85\u00a0km\/h/);
    expect(words.setUp.gaps("3", "1.2")).toMatch(/3.*1\.2/);
    expect(words.heard.between("31.0", "31.0")).toBe("31.0\u00a0Hz");
    expect(words.heard.between("31.0", "40.0")).toMatch(/31\.0.*40\.0/);
  }
});
