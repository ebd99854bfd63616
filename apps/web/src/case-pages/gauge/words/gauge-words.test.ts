import { expect, test } from "vitest";
import { en } from "./en.js";
import { es } from "./es.js";

/** Every sentence by its key; a function stands for itself. */
const sentences = (words: object, at = ""): readonly (readonly [key: string, text: unknown])[] =>
  Object.entries(words).flatMap(([key, value]) =>
    typeof value === "object"
      ? sentences(value, `${at}${key}.`)
      : [[`${at}${key}`, typeof value === "function" ? value("5.6", 2) : value] as const],
  );

test("both languages say the same things, and none says nothing", () => {
  const [english, spanish] = [sentences(en), sentences(es)];
  expect(spanish.map(([key]) => key)).toEqual(english.map(([key]) => key));
  for (const [key, text] of [...english, ...spanish]) expect(text, key).toMatch(/\S/);
});

test("what fills a gap in a sentence appears in it", () => {
  for (const words of [en, es]) {
    expect(words.upright("87.6°")).toContain("87.6°");
    expect(words.asOffPlumb("2.4°")).toContain("2.4°");
    expect(words.readAgain("Front section")).toContain("Front section");
    expect(words.setUp.gaugingName("as found", 6)).toContain("6");
    expect(words.setUp.gaugingName("as found", 1)).not.toBe(words.setUp.gaugingName("as found", 6));
  }
});

test("the two ends are never called alike", () => {
  for (const words of [en, es]) {
    expect(words.lower.front).not.toBe(words.lower.rear);
    expect(words.leans.front).not.toBe(words.leans.rear);
    expect(words.setUp.zeroDisplay["display-left"]).not.toBe(words.setUp.zeroDisplay["display-right"]);
  }
});
