import { expect, test } from "vitest";
import { serverWords } from "./index.js";

const { en, es } = serverWords;

test("every language says the same things", () => {
  expect(Object.keys(es.refusals)).toEqual(Object.keys(en.refusals));
  expect(Object.keys(es.faults)).toEqual(Object.keys(en.faults));
});

/** Parameters that any sentence may ask for. */
const SAMPLE = {
  what: "WHAT",
  method: "METHOD",
  why: "WHY",
  id: "ID",
  revision: 12,
  setAside: 13,
  problems: 3,
  address: "ADDRESS",
  document: "DOCUMENT",
  example: "EXAMPLE",
  got: "GOT",
  limit: 20_000_000,
  pixels: 30_000_000,
  expected: "EXPECTED",
  name: "NAME",
  allowed: ["ALLOWED"],
  host: "HOST",
  origin: "ORIGIN",
};

test.each(Object.keys(en.refusals) as (keyof typeof en.refusals)[])(
  "%s is one sentence or two, translated, with the same things named",
  (code) => {
    const [english, spanish] = [en, es].map(({ refusals }) => (refusals[code] as (params: typeof SAMPLE) => string)(SAMPLE)) as [
      string,
      string,
    ];
    for (const text of [english, spanish]) {
      expect(text).toMatch(/[.?]$/);
      expect(text).not.toMatch(/undefined|\[object|NaN/);
    }
    expect(spanish).not.toBe(english);
    // Names and numbers come in both; only the words between differ.
    const named = (text: string): readonly string[] => [...(text.match(/[A-Z]{4,}|ID|\d+/g) ?? [])].sort();
    expect(named(spanish)).toEqual(named(english));
  },
);

test.each(Object.keys(en.faults) as (keyof typeof en.faults)[])("the fault %s is translated", (code) => {
  expect(es.faults[code]).not.toBe(en.faults[code]);
});
