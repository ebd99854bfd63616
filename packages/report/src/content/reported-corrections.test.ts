import type { Case } from "@halfturn/casefile";
import { expect, test } from "vitest";
import { exampleCase, reportedGaugings, sampleReport } from "../sample-report.test-support.js";
import { reportContent } from "./report-content.js";
import { reportedCorrections } from "./reported-corrections.js";

const corrected = exampleCase("corrected");
type Gauging = NonNullable<Case["gauging"]>[number];
type Correction = NonNullable<Case["corrections"]>[number];
const [found, after] = corrected.gauging as readonly [Gauging, Gauging];
const [record] = corrected.corrections as readonly [Correction];

/** Corrected twice: one wedge after the other, the second from what the first had left. */
const twice: Case = {
  ...corrected,
  corrections: [record, { ...record, chosenAt: "2026-04-16", basis: [{ driveline: "rear", gauging: 1 }] }],
  gauging: [found, after, { ...after, takenAt: "2026-04-17T09:00:00Z" }],
};
const SETTINGS = { draws: 200, seed: 1, accepted: [] };

test("each correction stands between its own gaugings, and what is known already is not worked out again", () => {
  const known = reportedGaugings(twice);
  const places = (of: readonly { readonly gauging: number | null }[]) => of.map(({ gauging }) => gauging);
  expect(places(known)).toEqual([2]);
  const corrections = reportedCorrections(twice, SETTINGS, known);
  expect(corrections.map(({ before, after: later }) => [places(before), places(later)])).toEqual([
    [[0], [1]],
    [[1], [2]],
  ]);
  expect(corrections[1]?.after[0]).toBe(known[0]);
  expect(corrections[0]?.after[0]).toBe(corrections[1]?.before[0]);
});

test("the report has a part for each, and its conclusion the last proof", () => {
  const content = reportContent(sampleReport(twice));
  const titles = content.sections.map(({ title }) => title);
  expect(titles.filter((title) => /^(Chosen|Gauged again) on/.test(title))).toEqual([
    "Chosen on 13 April 2026",
    "Chosen on 16 April 2026",
    "Gauged again on 15 April 2026",
    "Gauged again on 17 April 2026",
  ]);
  // The second wedge never came: the vehicle stands as before it.
  const proofs = content.sections[0]?.blocks.filter((block) => block.kind === "notice" && /foretold/.test(block.title));
  expect(proofs).toMatchObject([{ tone: "unsure" }]);
});

test("a correction that the case does not hold is a mistake of the caller", () => {
  const report = sampleReport(corrected);
  const [first] = report.corrections;
  expect(() => reportContent({ ...report, corrections: [{ ...first, correction: 7 }] as never })).toThrow(/no correction 7/);
});
