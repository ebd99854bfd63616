import { expect, test } from "vitest";
import type { Block, ReportContent } from "../content/blocks.js";
import { reportContent } from "../content/report-content.js";
import { exampleCase, sampleReport } from "../sample-report.test-support.js";
import { pdfPages } from "./pdf-text.test-support.js";
import { renderPdf } from "./render-pdf.js";

const CONTENT = reportContent(sampleReport(exampleCase("one-piece")));
const ROWS = 14;

/** Longer than what is kept in one piece; its rows have two lines, and so has its head. */
const TABLE: Block = {
  kind: "table",
  caption: "(caption)",
  columns: [
    { label: "(head) of several words that need two lines of this", weight: 1, align: "start" },
    { label: "Reading", weight: 3, align: "end" },
  ],
  rows: Array.from({ length: ROWS }, (_, k) => [{ text: `(row ${k})`, detail: "detail" }, { text: "1.0" }]),
  notes: [],
};

const below = (lines: number): ReportContent => ({
  ...CONTENT,
  sections: [
    { title: "Before", level: 1, blocks: Array.from({ length: lines }, () => ({ kind: "paragraph", text: "." })) },
    { title: "(section)", level: 1, blocks: [TABLE] },
  ],
});

/** From a table in the middle of a page to one that begins on the next. */
const STARTS = Array.from({ length: 26 }, (_, k) => 14 + k);

test.each(["a4", "letter"] as const)("wherever a long table begins on %s, two rows stand below its caption and its head", async (paper) => {
  const pagesOfTable: number[] = [];
  for (const lines of STARTS) {
    const pages = await pdfPages(renderPdf(below(lines), { paper }));
    const page = pages.find((text) => text.includes("(caption)")) ?? "";
    expect(page, `${lines} lines`).toContain("(section)");
    for (const part of ["(head)", "(row0)", "(row1)"]) expect(page, `${lines} lines`).toContain(part);
    pagesOfTable.push(pages.filter((text) => text.includes("(head)")).length);
  }
  // Else no start was near the foot.
  expect(Math.max(...pagesOfTable)).toBe(2);
});
