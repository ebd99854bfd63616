import { describe, expect, it } from "vitest";
import { problemText } from "./catalogue.js";
import { COVERED_PROBLEMS, catalogueStrings, SAMPLE_FINDINGS, SAMPLE_PROBLEMS } from "./catalogue-strings.test-support.js";
import { catalogues } from "./catalogues.js";
import { CAUTION_STEPS, cautionsOf } from "./cautions.js";
import { findingText } from "./finding-text.js";
import { LANGUAGES } from "./language.js";

const strings = LANGUAGES.map((language) => [language, catalogueStrings(catalogues[language])] as const);

/** Words that are common in English sentences and are no Spanish words. */
const ENGLISH = /\b(the|and|of|with|that|this|from|which|between|reading|again|before|shaft|joint|angle|limit|should|not|is|are|was)\b/i;

/** Labels that are spelled the same in both languages, or are units and names. */
const SAME_IN_BOTH = new Set(["labels.interval95"]);

describe("catalogues", () => {
  it.each(strings)("%s has every key of the others", (_, mine) => {
    const all = new Set(strings.flatMap(([, other]) => [...other.keys()]));
    expect([...all].filter((key) => !mine.has(key))).toEqual([]);
  });

  it.each(strings)("%s has no empty, broken or untrimmed text", (_, mine) => {
    const broken = [...mine].filter(([, text]) => text.trim() !== text || text === "" || /undefined|null\b(?!")|NaN|\[object|…/.test(text));
    expect(broken).toEqual([]);
  });

  it("leaves no English in Spanish", () => {
    const [, en] = strings[0] as (typeof strings)[number];
    const [, es] = strings[1] as (typeof strings)[number];
    // Words between quotes and codes are what a file or command holds; they stay as they are.
    const bare = (text: string): string => text.replaceAll(/"[^"]*"|`[^`]*`|\S*[.[]\S+|--[\w-]+|\bab-1\b/g, "");
    expect([...es].filter(([, text]) => ENGLISH.test(bare(text)))).toEqual([]);
    const same = [...es].filter(([key, text]) => en.get(key) === text && /[a-z]{4}/i.test(bare(text)) && !SAME_IN_BOTH.has(key));
    expect(same).toEqual([]);
  });

  it("has a sample problem of every code", () => {
    expect(SAMPLE_PROBLEMS.map(({ code }) => code).toSorted()).toEqual(COVERED_PROBLEMS.toSorted());
  });

  it.each(LANGUAGES)("%s says a problem on one line that starts with its place", (language) => {
    for (const problem of SAMPLE_PROBLEMS) {
      const line = problemText(catalogues[language], problem);
      expect(line).not.toMatch(/\n/);
      expect(line.startsWith(problem.path === "" ? `${catalogues[language].wholeFile}: ` : problem.path)).toBe(true);
    }
  });

  it.each(LANGUAGES)("%s ends every sentence of a finding with a full stop", (language) => {
    for (const finding of SAMPLE_FINDINGS) {
      const { says, doNext, title } = findingText(catalogues[language], finding);
      expect([finding.code, says, /[.?]$/.test(says), doNext, /[.?]$/.test(doNext)]).toEqual([finding.code, says, true, doNext, true]);
      expect(title).not.toMatch(/\.$/);
    }
  });

  it("uses the labels of the case and names the ends of the driveline", () => {
    const finding = { code: "gauging.shaft-not-read", severity: "warn", path: "gauging[0]", params: { shaft: "front" } } as const;
    expect(findingText(catalogues.en, finding, () => "Front section").says).toMatch(/^Front section was not gauged/);
    expect(findingText(catalogues.en, { ...finding, params: { shaft: "driven" } }).says).toMatch(/^Pinion was not gauged/);
  });

  it("keeps the sign of a phasing and leaves it off an inclination that has its word", () => {
    const better = {
      code: "driveline.better-phasing",
      severity: "note",
      path: "",
      params: { section: "front", bestDeg: -4.7, phasingDeg: 90 },
    } as const;
    expect(findingText(catalogues.en, better).says).toMatch(/phased at -5° instead of 90°/);
    const aside = { code: "gauging.reading-set-aside", severity: "warn", path: "", params: { shaft: "front", readingDeg: -1.8 } } as const;
    expect(findingText(catalogues.en, aside).says).toMatch(/1\.8° \(source end lower\)/);
  });

  it("keeps a caution for each step that can hurt", () => {
    const steps = new Set(Object.values(CAUTION_STEPS));
    for (const step of steps) expect(cautionsOf(catalogues.en.cautions, step).length).toBeGreaterThan(0);
    expect([...steps]).toEqual(expect.arrayContaining(["record", "isolate", "gauge", "correct", "prove"]));
    expect(cautionsOf(catalogues.en.cautions, "correct").join(" ")).toMatch(/Park .* may no longer hold/);
  });
});
