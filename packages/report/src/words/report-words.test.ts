import { LANGUAGES } from "@halfturn/words";
import { expect, test } from "vitest";
import { reportWords } from "./index.js";

/** Words that are common in English sentences and are no Spanish words. */
const ENGLISH = /\b(the|and|of|with|that|this|from|which|between|reading|again|before|shaft|joint|angle|limit|should|not|is|are|was)\b/i;

/** Every sentence under its key; functions are called with one fixed set of arguments, both ways where one is a switch. */
function sentences(value: unknown, key = ""): readonly (readonly [key: string, text: string])[] {
  if (typeof value === "string") return [[key, value]];
  if (typeof value === "function") {
    const say = value as (...args: readonly unknown[]) => string;
    return [
      [key, say("a", "b", "c", "d", "e")],
      [`${key}.other`, say("a", null, null, "d", "e")],
    ];
  }
  return Object.entries(value as object).flatMap(([name, inner]) => sentences(inner, key === "" ? name : `${key}.${name}`));
}

test("every language says the same things, none of them empty or broken", () => {
  const [first, ...others] = LANGUAGES.map((language) => sentences(reportWords[language]));
  const keys = first?.map(([key]) => key).toSorted();
  expect(keys?.length).toBeGreaterThan(150);
  for (const other of others) expect(other.map(([key]) => key).toSorted()).toEqual(keys);
  for (const [key, text] of [first, ...others].flatMap((all) => all ?? [])) {
    expect(text.trim(), key).toBe(text);
    expect(text, key).not.toMatch(/^$|undefined|NaN|\[object/);
  }
});

test("no English is left in Spanish", () => {
  const english = new Map(sentences(reportWords.en));
  const spanish = sentences(reportWords.es);
  expect(spanish.filter(([, text]) => ENGLISH.test(text))).toEqual([]);
  // Labels of a single word may be spelled alike; sentences are not.
  const same = spanish.filter(([key, text]) => english.get(key) === text && /[a-z]{4}.* [a-z]{4}/i.test(text));
  expect(same).toEqual([]);
});
