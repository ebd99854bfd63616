import type { Case } from "@halfturn/casefile";
import { catalogueOf } from "@halfturn/words";
import { describe, expect, test } from "vitest";
import { exampleCase, sampleReport } from "../sample-report.test-support.js";
import type { Block, Notice, ReportContent, Table } from "./blocks.js";
import { reportContent } from "./report-content.js";

type Gauging = NonNullable<Case["gauging"]>[number];

const corrected = exampleCase("corrected");
const [found, after] = corrected.gauging as readonly [Gauging, Gauging];

/** The example with another gauging after the correction. */
const gaugedAfter = (change: Partial<Gauging>): Case => ({ ...corrected, gauging: [found, { ...after, ...change }] });
const pinionAt = (deg: number): Case =>
  gaugedAfter({ readings: after.readings.map((reading, k) => (k === after.readings.length - 1 ? { ...reading, deg } : reading)) });

const contentOf = (file: Case, language: "en" | "es" = "en"): ReportContent => reportContent(sampleReport(file, language));
function proveOf(content: ReportContent, title = "Prove"): readonly Block[] {
  const from = content.sections.findIndex((section) => section.level === 1 && section.title === title);
  if (from < 0) return [];
  return content.sections[from + 1]?.blocks ?? [];
}
const noticeOf = (blocks: readonly Block[]): Notice | undefined => blocks.find((block) => block.kind === "notice");
const tablesOf = (blocks: readonly Block[]): readonly Table[] => blocks.filter((block) => block.kind === "table");

describe("a vehicle that stands as foretold", () => {
  const content = contentOf(corrected);
  const blocks = proveOf(content);

  test("says so in words, in the section and in the conclusion", () => {
    const notice = noticeOf(blocks);
    expect(notice).toMatchObject({ tone: "good", title: "Every shaft stands as foretold, within the uncertainty of both.", lines: [] });
    expect(content.sections[0]?.blocks).toContainEqual(notice);
  });

  test("asks for the road, with its cautions", () => {
    const [steps] = blocks.filter((block) => block.kind === "steps");
    expect(steps?.items).toEqual([
      {
        text: "Prove it on the road, at the speed and load of the complaint.",
        cautions: [catalogueOf("en").cautions.texts["prove-from-slow"], catalogueOf("en").cautions.texts["driver-never-operates"]],
      },
    ]);
  });

  test("holds each shaft's inclination against the gauging", () => {
    const [shafts] = tablesOf(blocks) as readonly [Table];
    expect(shafts.rows.map((row) => row.map(({ text }) => text))).toEqual([
      ["Transmission output", "2.50°", "2.50°", "2.50°", "0.00°", "as foretold"],
      ["Front section", "3.50°", "3.50°", "3.50°", "0.00°", "as foretold"],
      ["Rear section", "6.30°", "6.03°", "6.00°", "-0.03°", "as foretold"],
      ["Rear pinion", "1.20°", "3.20°", "3.10°", "-0.10°", "as foretold"],
    ]);
  });

  test("puts before, foretold and measured side by side, and does so once", () => {
    const [, results] = tablesOf(blocks) as readonly [Table, Table];
    expect(results.columns.map(({ label }) => label)).toEqual(["Quantity", "Before", "Foretold", "Gauged after"]);
    expect(results.rows[3]?.map(({ text }) => text)).toEqual([
      "Equivalent angle",
      "4.15°, over the limit",
      "0.86°, within limits",
      "1.11°, within limits",
    ]);
    expect(content.sections.map(({ title }) => title)).not.toContain("Driveline rear: before and after");
  });

  test("draws what was foretold above what was measured", () => {
    const [figure] = blocks.filter((block) => block.kind === "figure");
    expect(figure?.alt).toMatch(/Foretold: J1.*Gauged after: J1/);
  });

  test("stands in Spanish as well", () => {
    const spanish = proveOf(contentOf(corrected, "es"), "Comprobar");
    expect(spanish.map(({ kind }) => kind)).toEqual(blocks.map(({ kind }) => kind));
    expect(noticeOf(spanish)?.title).toBe(catalogueOf("es").correction.predictionVerdicts.confirmed);
  });
});

describe("a vehicle that does not", () => {
  test("says which shaft, by how much, and what to look at", () => {
    // As if the wedges had gone in the wrong way round: 2 degrees down instead of up.
    const down = { ...after.readings.at(-1), deg: 0.8, topLeans: "source-end" } as Gauging["readings"][number];
    const blocks = proveOf(contentOf(gaugedAfter({ readings: [...after.readings.slice(0, -1), down] })));
    const notice = noticeOf(blocks);
    expect(notice).toMatchObject({ tone: "unsure", title: "Not every shaft stands as foretold." });
    expect(notice?.lines).toContainEqual(expect.stringMatching(/^Rear pinion: foretold 3\.20°, measured -0\.80°\. They lie 4\.00° apart/));
    const [steps] = blocks.filter((block) => block.kind === "steps");
    expect(steps?.title).toBe("What to look at");
    expect(steps?.items[0]?.text).toBe(catalogueOf("en").correction.looks["thick-end-turned-round"]);
  });

  test("within the uncertainty of both is as foretold, beyond it differs", () => {
    expect(noticeOf(proveOf(contentOf(pinionAt(3.3))))?.tone).toBe("good");
    expect(noticeOf(proveOf(contentOf(pinionAt(3.6))))?.tone).toBe("unsure");
  });
});

test("standing as foretold is not the same as being cured", () => {
  const strict = { ...corrected, limits: { equivalentMaximumDeg: 0.5 } };
  expect(noticeOf(proveOf(contentOf(strict)))?.lines).toEqual([expect.stringMatching(/not everything is within limits/)]);
});

test("a gauging that a stop finding spoils proves nothing", () => {
  const blocks = proveOf(contentOf(gaugedAfter({ state: { rideHeight: "normal", wheels: "hanging" } })));
  expect(noticeOf(blocks)).toMatchObject({ tone: "stop", title: expect.stringMatching(/nothing was held against it/) });
  expect(tablesOf(blocks)[0]?.rows[0]?.at(-1)?.text).toMatch(/, not road angles$/);
});

test("until it is gauged again there is no such section", () => {
  expect(contentOf({ ...corrected, gauging: [found] }).sections.map(({ title }) => title)).not.toContain("Prove");
});

test("a gauging after, without any correction on record, is only compared", () => {
  const titles = contentOf(exampleCase("one-piece")).sections.map(({ title }) => title);
  expect(titles).not.toContain("Prove");
});
