import type { Case } from "@halfturn/casefile";
import { catalogueOf } from "@halfturn/words";
import { describe, expect, test } from "vitest";
import { exampleCase, sampleReport } from "../sample-report.test-support.js";
import type { Block, ReportContent, Table } from "./blocks.js";
import { reportContent } from "./report-content.js";

type Correction = NonNullable<Case["corrections"]>[number];

const corrected = exampleCase("corrected");
const [record] = corrected.corrections as readonly [Correction];

/** The blocks from one heading of the first level to the next. */
function part(content: ReportContent, title: string): readonly Block[] {
  const from = content.sections.findIndex((section) => section.level === 1 && section.title === title);
  if (from < 0) return [];
  const next = content.sections.findIndex((section, k) => k > from && section.level === 1);
  return content.sections.slice(from, next).flatMap(({ blocks }) => blocks);
}
const contentOf = (file: Case, language: "en" | "es" = "en"): ReportContent => reportContent(sampleReport(file, language));
const correctOf = (file: Case): readonly Block[] => part(contentOf(file), "Correct");
const tablesOf = (blocks: readonly Block[]): readonly Table[] => blocks.filter((block) => block.kind === "table");
const withRecord = (change: Partial<Correction>): Case => ({ ...corrected, corrections: [{ ...record, ...change }] });
const chanceOf = (change: Partial<Correction>): string | undefined =>
  correctOf(withRecord(change))
    .flatMap((block) => (block.kind === "facts" ? block.items : []))
    .find(({ label }) => label === "Chance of all limits")?.value;

describe("the section Correct", () => {
  const blocks = correctOf(corrected);
  const steps = blocks.flatMap((block) => (block.kind === "steps" ? block.items : []));

  test("says what was chosen, when, from which gauging, and the chance", () => {
    expect(blocks[0]).toEqual({
      kind: "facts",
      items: [
        { label: "Change", value: "Spring pad wedges: 2° pinion nose up" },
        { label: "Chosen on", value: "13 April 2026" },
        { label: "Made on", value: "15 April 2026" },
        { label: "Worked out from", value: "Driveline rear, gauged as found on 13 April 2026" },
        { label: "Chance of all limits", value: "over 99%, for every limit in every state below" },
      ],
    });
  });

  test("puts every state beside what was before, with values and intervals as recorded", () => {
    const [table] = tablesOf(blocks) as readonly [Table];
    expect(table.columns.map(({ label }) => label)).toEqual([
      "Quantity",
      "Before",
      "Foretold: bed empty",
      "Foretold: bed loaded",
      "Foretold: pulling away",
    ]);
    record.predicted.forEach(({ drivelines: [foretold] }, state) => {
      const angles = foretold?.joints.map(({ operatingAngleDeg }) => operatingAngleDeg) ?? [];
      angles.forEach((angle, joint) => {
        const cell = table.rows[joint]?.[2 + state];
        expect(cell?.text).toMatch(new RegExp(`^${angle?.value.toFixed(2)}°, `));
        expect(cell?.detail).toBe(`${angle?.interval95[0].toFixed(2)}° to ${angle?.interval95[1].toFixed(2)}°`);
      });
      const slip = foretold?.slipTravelMm;
      expect(table.rows.at(-1)?.[2 + state]?.text).toBe(`${slip?.value.toFixed(1)}\u00a0mm, within limits`);
      expect(table.rows.at(-1)?.[2 + state]?.detail).toBe(`${slip?.interval95[0].toFixed(1)} to ${slip?.interval95[1].toFixed(1)}\u00a0mm`);
    });
    expect(table.rows.map((row) => row[1]?.text)).toContain("4.15°, over the limit");
  });

  test("more states than fit beside one another go into a table of their own", () => {
    const many = [...record.predicted, ...record.predicted.slice(0, 2)];
    expect(tablesOf(correctOf(withRecord({ predicted: many }))).map(({ columns }) => columns.length)).toEqual([5, 4]);
  });

  test("gives the steps as recorded, each with its cautions beside it", () => {
    expect(steps).toHaveLength(record.instructions?.length ?? 0);
    expect(steps[0]?.text).toMatch(/^Spring pad wedges: fit a wedge of 2°/);
    expect(steps[0]?.cautions).toEqual([
      catalogueOf("en").cautions.texts["supported-vehicle"],
      catalogueOf("en").cautions.texts["brake-and-steering-lines"],
    ]);
    expect(steps[1]?.cautions).toEqual([]);
    expect(steps.at(-1)?.cautions).toEqual([catalogueOf("en").cautions.texts["prove-from-slow"]]);
  });

  test("asks for the maker's torques and for new single-use fasteners even where the record does not", () => {
    const { instructions: _instructions, ...bare } = record;
    const without = correctOf({ ...corrected, corrections: [bare] });
    const texts = without.flatMap((block) => (block.kind === "steps" ? block.items.map(({ text }) => text) : []));
    expect(texts).toEqual([expect.stringMatching(/used once only/), expect.stringMatching(/maker's torques/)]);
    expect(without).toContainEqual({ kind: "paragraph", text: "No steps stand on record. Work by the vehicle maker's procedure." });
  });

  test("shows before and after in one figure", () => {
    const [figure] = blocks.filter((block) => block.kind === "figure");
    expect(figure?.alt).toMatch(/Before: J1.*Foretold: bed empty: J1/);
  });

  test("a chance between is said in per cent, an unknown one says why, none says so", () => {
    expect(chanceOf({ probabilityWithin: 0.83 })).toBe("83%, for every limit in every state below");
    expect(chanceOf({ probabilityWithin: 0.001 })).toBe("under 1%, for every limit in every state below");
    expect(chanceOf({ probabilityWithin: null, probabilityOfLimits: 0.5 })).toMatch(/^chance not known.*50%/);
    const { probabilityWithin: _within, ...unasked } = record;
    const facts = correctOf({ ...corrected, corrections: [unasked] }).find((block) => block.kind === "facts");
    expect(facts?.items.at(-1)?.value).toBe("not worked out");
  });

  test("an older record without shafts and accelerations says what it does not hold and draws nothing made up", () => {
    const predicted = record.predicted.map(({ drivelines, ...state }) => ({
      ...state,
      drivelines: drivelines.map(({ shafts: _shafts, highestSpeed: _speed, ...rest }) => rest),
    }));
    const old = correctOf(withRecord({ predicted }));
    expect(tablesOf(old)[0]?.rows.find((row) => row[0]?.text === "Driven end")?.[2]?.text).toBe("not on record");
    expect(old.filter(({ kind }) => kind === "figure")).toEqual([]);
  });

  test("a record from elsewhere cannot break it: unknown steps, cautions, adjusters, gaugings and odd params", () => {
    const strange = correctOf(
      withRecord({
        basis: [{ driveline: "rear", gauging: 99 }],
        changes: [{ adjuster: "gone", amount: -3, unit: "mm" }],
        instructions: [
          { code: "weld-it", params: {}, cautions: ["none-such"] },
          { code: "trade-off", params: { limit: {} } },
          { code: "trade-off", params: { curedStates: [1, {}], limit: "joint-over", state: null, of: {} } },
        ],
      }),
    );
    const [first, second, third] = strange.flatMap((block) => (block.kind === "steps" ? block.items : []));
    expect(first).toEqual({ text: expect.stringMatching(/no words for: weld-it/), cautions: [] });
    expect(second?.text).toMatch(/no words for: trade-off/);
    expect(third?.text).not.toMatch(/\[object|undefined|NaN/);
    expect(strange[0]).toMatchObject({ items: expect.arrayContaining([{ label: "Change", value: "gone: -3\u00a0mm" }]) });
    expect(strange[0]).toMatchObject({
      items: expect.arrayContaining([{ label: "Worked out from", value: "a gauging that the case no longer holds" }]),
    });
  });
});

describe("without a correction", () => {
  test("one line says that nothing was chosen", () => {
    expect(correctOf(exampleCase("two-piece"))).toEqual([
      { kind: "paragraph", text: "The case lists 5 ways to correct; none has been chosen, so nothing is foretold yet." },
    ]);
  });

  test("nothing at all is said where nothing could be adjusted", () => {
    const { adjusters: _adjusters, ...rest } = exampleCase("two-piece");
    expect(contentOf(rest).sections.map(({ title }) => title)).not.toContain("Correct");
  });
});

test("it stands in Spanish as well, with the same blocks", () => {
  const spanish = part(contentOf(corrected, "es"), "Corregir");
  expect(spanish.map(({ kind }) => kind)).toEqual(correctOf(corrected).map(({ kind }) => kind));
  expect(JSON.stringify(spanish)).toMatch(/Qué hacer, en este orden/);
});
