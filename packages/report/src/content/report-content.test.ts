import type { Case } from "@halfturn/casefile";
import { analyseDriveline } from "@halfturn/engine/analysis";
import { describe, expect, test } from "vitest";
import { EXAMPLE_NAMES, exampleCase, reportedGaugings, sampleAnalysis, sampleReport } from "../sample-report.test-support.js";
import type { Block, Notice, ReportContent, Table } from "./blocks.js";
import { reportContent } from "./report-content.js";

const blocksOf = (content: ReportContent): readonly Block[] => content.sections.flatMap(({ blocks }) => blocks);
const tablesOf = (content: ReportContent): readonly Table[] => blocksOf(content).filter((block) => block.kind === "table");
const tableOf = (content: ReportContent, caption: string): Table => {
  const found = tablesOf(content).find((table) => table.caption === caption);
  if (!found) throw new Error(`No table is called ${caption}.`);
  return found;
};
const noticesOf = (content: ReportContent): readonly Notice[] => blocksOf(content).filter((block) => block.kind === "notice");
const cellsOf = (table: Table): readonly string[] => table.rows.flat().map(({ text }) => text);

/** The one-piece example, at a stop finding that somebody may have accepted. */
function stopped(accepted: Case["acceptedFindings"]): Case {
  const file = exampleCase("one-piece");
  return {
    ...file,
    gauging: (file.gauging ?? []).map((gauging) => ({ ...gauging, state: { ...gauging.state, rideHeight: "drooped" as const } })),
    ...(accepted ? { acceptedFindings: accepted } : {}),
  };
}

describe.each(EXAMPLE_NAMES)("the report of %s", (name) => {
  const file = exampleCase(name);
  const gaugings = reportedGaugings(file);
  const content = reportContent(sampleReport(file, "en", gaugings));

  test("is plain data", () => {
    expect(JSON.parse(JSON.stringify(content))).toEqual(content);
  });

  test("puts the conclusion first", () => {
    expect(content.sections[0]?.title).toBe("Conclusion");
    expect(content.sections[0]?.blocks.map(({ kind }) => kind)).toContain("notice");
    expect(content.sections[0]?.blocks.map(({ kind }) => kind)).toContain("list");
  });

  test("has every row as wide as its head, and no empty result", () => {
    for (const table of tablesOf(content)) {
      for (const row of table.rows) expect(row).toHaveLength(table.columns.length);
      expect(table.rows.length, table.caption).toBeGreaterThan(0);
    }
    for (const caption of ["Operating angle of each joint against its limits", "Equivalent angle, and the bench rule beside it"]) {
      for (const cell of cellsOf(tableOf(content, caption))) expect(cell).not.toBe("");
    }
  });

  test("repeats every reading as the display showed it", () => {
    const shown = tablesOf(content)
      .filter(({ caption }) => caption === "Readings as the display showed them")
      .flatMap(({ rows }) => rows.map((row) => row[2]?.text));
    const taken = gaugings.flatMap(({ gauging }) => (gauging === null ? [] : (file.gauging?.[gauging]?.readings ?? [])));
    expect(shown).toHaveLength(taken.length);
    expect(shown.map((text) => Number.parseFloat(text as string))).toEqual(taken.map(({ deg }) => deg));
  });

  test("prints every finding once, numbered through", () => {
    const entries = blocksOf(content).flatMap((block) => (block.kind === "findings" ? block.items : []));
    expect(entries.map(({ number }) => number)).toEqual(entries.map((_, k) => k + 1));
    expect(entries).toHaveLength(gaugings.reduce((sum, { analysis }) => sum + analysis.findings.length, 0));
  });

  test("says the same in Spanish: same sections, same numbers of rows", () => {
    const shape = (of: ReportContent) => blocksOf(of).map((block) => (block.kind === "table" ? block.rows.length : block.kind));
    const spanish = reportContent(sampleReport(file, "es", gaugings));
    expect(shape(spanish)).toEqual(shape(content));
    spanish.sections.forEach(({ title }, k) => {
      const english = content.sections[k]?.title;
      if (!title.includes(",")) expect(["Figuras", "Conclusión"].includes(title) || title !== english, title).toBe(true);
    });
  });
});

test("an acceleration inside its limit that may pass the caution says so in the conclusion and in its row", () => {
  const limits = { equivalentMaximumDeg: 4, drivenAccelerationOverRadS2: 500 };
  const content = reportContent(sampleReport({ ...exampleCase("two-piece"), limits }));
  expect(noticesOf(content)[0]?.lines.join("\n")).toMatch(/within its limit, but it may pass 300\u00a0rad\/s², where caution begins/);
  expect(cellsOf(tableOf(content, "Motion, with accelerations at the highest shaft speed"))).toContain("within limits, caution");
});

test("a Spanish report says in Spanish what the format's own words and the built-in limits mean, and names places in words", () => {
  const content = reportContent(sampleReport(exampleCase("two-piece"), "es"));
  expect(content.head.items.at(-1)?.value).toMatch(/^Se nota a 80–90\u00a0km\/h; Marcha 4; Se nota en suelo; Carga a velocidad constante/);
  const sources = tableOf(content, "Límites aplicados").rows.map((row) => row[2]?.text ?? "");
  expect(sources.filter((source) => !/memoria|práctica común|no se conoce/.test(source))).toEqual([]);
  const places = blocksOf(content).flatMap((block) => (block.kind === "findings" ? block.items.map(({ place }) => place) : []));
  expect(places.length).toBeGreaterThan(3);
  for (const place of places) expect(place).toMatch(/^(Dónde: [^[\]]+)?$/);
});

test("names where a limit comes from", () => {
  const content = reportContent(sampleReport(exampleCase("two-piece")));
  expect(tableOf(content, "Operating angle of each joint against its limits").notes.join(" ")).toContain(
    "Limit of J1, J2, and J3: from memory",
  );
  for (const row of tableOf(content, "Limits used").rows) expect(row[2]?.text).not.toBe("");
});

describe("with made-up results of every kind", () => {
  const file = exampleCase("three-piece");
  const content = reportContent(
    sampleReport(
      file,
      "en",
      reportedGaugings(file, (input) => sampleAnalysis(input)),
    ),
  );

  test("the conclusion says what is over, under, uncertain and unknown", () => {
    const [notice] = noticesOf(content);
    expect(notice?.tone).toBe("over");
    expect(notice?.lines.join("\n")).toMatch(/at most 4\.80° is allowed/);
    expect(notice?.lines.join("\n")).toMatch(/works somewhere from 4\.02° to 4\.40°/);
    expect(notice?.lines.join("\n")).toMatch(/the limit of 3\.00° lies in that range/);
  });

  test("a reading that was set aside is struck through and says so", () => {
    const struck = tableOf(content, "Readings as the display showed them").rows.filter((row) => row[2]?.struck);
    expect(struck).toHaveLength(1);
    expect(struck[0]?.[6]?.text).toMatch(/^set aside; see finding \d+/);
  });

  test("an acceleration that is not known says why", () => {
    expect(cellsOf(tableOf(content, "Motion, with accelerations at the highest shaft speed"))).toContain("not known from what was gauged");
  });

  test("the budget's shares add up to what the analysis gave", () => {
    const shares = tableOf(content, "Largest contributions to the uncertainty of the equivalent angle").rows.map((row) =>
      Number.parseInt(row[1]?.text ?? "", 10),
    );
    expect(shares[0]).toBe(41);
    expect(shares).toHaveLength(6);
  });
});

describe("a stop finding", () => {
  test("withholds every verdict and says so first", () => {
    const content = reportContent(sampleReport(stopped(undefined)));
    expect(noticesOf(content)[0]).toMatchObject({ tone: "stop", title: expect.stringMatching(/these are not road angles/) });
    const verdicts = tableOf(content, "Operating angle of each joint against its limits").rows.map((row) => row.at(-1)?.text);
    expect(new Set(verdicts)).toEqual(new Set(["not road angles"]));
  });

  test("that a person accepted stands before the conclusion, with who, when and why", () => {
    const accepted = [
      { code: "gauging.not-at-ride-height", at: "2026-05-17T23:30:00-03:00", by: "R. Quill", reason: "Only the ramp was free." },
    ];
    const content = reportContent(sampleReport(stopped(accepted)));
    const [first, second] = noticesOf(content);
    expect(first?.title).toMatch(/^Accepted by a person: /);
    expect(first?.lines).toContain("Accepted by R. Quill on 17 May 2026.");
    expect(first?.lines).toContain("Reason given: Only the ramp was free.");
    expect(second?.title).not.toMatch(/not road angles/);
  });
});

test("before and after stand side by side, and the later gauging decides", () => {
  const one = exampleCase("one-piece");
  const [found] = one.gauging ?? [];
  if (!found) throw new Error("The example has no gauging.");
  const file: Case = {
    ...one,
    gauging: [
      { ...found, stage: "as-found" },
      { ...found, stage: "after" },
    ],
  };
  const [after] = reportedGaugings(file);
  const asFound = { ...after, gauging: 0 };
  const content = reportContent(sampleReport(file, "en", [asFound, after] as never));
  const table = tableOf(content, "Each result before and after the correction");
  for (const row of table.rows) expect(row[1]?.text).toBe(row[2]?.text);
  expect(
    noticesOf(content)
      .map(({ title }) => title)
      .join(),
  ).toMatch(/after correction/);
  expect(
    noticesOf(content)
      .map(({ title }) => title)
      .join(),
  ).not.toMatch(/as found/);
});

test("a driveline that was never gauged says so and asks for the gauging", () => {
  const one = exampleCase("one-piece");
  const file: Case = { ...one, gauging: [] };
  const content = reportContent(sampleReport(file, "en", reportedGaugings(file, analyseDriveline)));
  expect(noticesOf(content)[0]?.title).toMatch(/No verdict: not everything could be gauged/);
  expect(blocksOf(content)).toContainEqual({ kind: "paragraph", text: "No readings were taken." });
});

test("a case without any gauging to report concludes nothing", () => {
  const content = reportContent(sampleReport(exampleCase("one-piece"), "en", []));
  expect(noticesOf(content)).toEqual([
    { kind: "notice", tone: "none", title: "Nothing has been gauged yet, so there is nothing to conclude.", lines: [] },
  ]);
});

test("a gauging that the case does not hold is a mistake of the caller", () => {
  const file = exampleCase("one-piece");
  const [reported] = reportedGaugings(file);
  expect(() => reportContent(sampleReport(file, "en", [{ ...reported, gauging: 99 }] as never))).toThrow(/no gauging 99/);
});
