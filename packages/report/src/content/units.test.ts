import { LANGUAGES } from "@halfturn/words";
import { describe, expect, test } from "vitest";
import { EXAMPLE_NAMES, exampleCase, sampleReport } from "../sample-report.test-support.js";
import type { ReportContent } from "./blocks.js";
import { reportContent } from "./report-content.js";
import type { ReportInput } from "./report-input.js";

const METRIC = /\d[\u00a0 ]?(?:mm|km\/h|m)(?![\p{L}\d/²])/gu;
const US = /\d[\u00a0 ]?(?:in|mph|ft)(?![\p{L}\d/])/gu;
const BESIDE = /\(-?[\d.,]+\u00a0mm\)/g;

/** Every text of a report, figures without their tags. */
function textsOf(value: unknown): readonly string[] {
  if (typeof value === "string") return [value.startsWith("<svg") ? value.replaceAll(/<[^>]*>/g, " ") : value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(textsOf) : [];
}

/** Numbers with their unit, and what stands beside them left out; what a person wrote into the case stays as it was written. */
const numbersIn = (content: ReportContent, file: ReportInput["case"], unit: RegExp): readonly string[] => {
  const own = new Set(textsOf(file));
  return textsOf(content).flatMap((text) => (own.has(text) ? [] : (text.replaceAll(BESIDE, "").match(unit) ?? [])));
};

describe.each(LANGUAGES)("%s", (language) => {
  test.each(EXAMPLE_NAMES)("the report of %s has no metric length or road speed in US units, and none of theirs in metric ones", (name) => {
    const file = exampleCase(name);
    const input = sampleReport(file, language);
    const [us, metric] = [reportContent({ ...input, units: "us" }), reportContent(input)];
    expect(numbersIn(us, file, METRIC)).toEqual([]);
    expect(numbersIn(metric, file, US)).toEqual([]);
    expect(numbersIn(us, file, US)).toHaveLength(numbersIn(metric, file, METRIC).length);
    expect(numbersIn(us, file, US)).not.toEqual([]);
    expect(reportContent({ ...input, units: "metric" })).toEqual(metric);
  });
});

/** One inch is 25.4 mm (international yard and pound agreement of 1959). */
const inches = (millimetres: number): string => (millimetres / 25.4).toFixed(3);

test("the slip and the complaint are the recorded ones, in inches and miles an hour", () => {
  const file = exampleCase("corrected");
  const texts = textsOf(reportContent({ ...sampleReport(file), units: "us" }));
  const slips = (file.corrections ?? []).flatMap(({ predicted }) =>
    predicted.flatMap(({ drivelines }) => drivelines[0]?.slipTravelMm ?? []),
  );
  expect(slips.length).toBeGreaterThan(0);
  for (const { value, interval95 } of slips) {
    expect(texts).toContain(`${inches(value)}\u00a0in, within limits`);
    expect(texts).toContain(`${inches(interval95[0])} to ${inches(interval95[1])}\u00a0in`);
  }
  const [from = 0, to = 0] = file.complaint?.speedKmh ?? [];
  expect(texts).toContain(`${(from / 1.609344).toFixed(0)} to ${(to / 1.609344).toFixed(0)}\u00a0mph`);
});
