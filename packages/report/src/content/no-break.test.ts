import { LANGUAGES } from "@halfturn/words";
import { expect, test } from "vitest";
import { EXAMPLE_NAMES, exampleCase, sampleReport } from "../sample-report.test-support.js";
import { reportContent } from "./report-content.js";

/** A number that a line may end with, its unit on the next one. */
const BREAKABLE = /\d (?:%|mm|in|km\/h|mph|ft|rpm|Hz|s|m\/s²|rad\/s²)(?![\p{L}\d/²])/u;

const textsOf = (value: unknown): readonly string[] => {
  // A line of a figure is not broken, and what is said of it to those who do not see it has no lines.
  if (typeof value === "string") return value.startsWith("<svg") ? [] : [value];
  return typeof value === "object" && value !== null
    ? Object.entries(value).flatMap(([key, inner]) => (key === "alt" ? [] : textsOf(inner)))
    : [];
};

test.each(LANGUAGES)("no sentence of a report parts a number from its unit (%s)", (language) => {
  for (const name of EXAMPLE_NAMES) {
    const file = exampleCase(name);
    // What a person wrote stays as it was written.
    const own = new Set(textsOf(file));
    for (const units of ["metric", "us"] as const) {
      const texts = textsOf(reportContent({ ...sampleReport(file, language), units })).filter((text) => !own.has(text));
      expect(texts.length).toBeGreaterThan(100);
      expect(texts.filter((text) => BREAKABLE.test(text))).toEqual([]);
    }
  }
});
