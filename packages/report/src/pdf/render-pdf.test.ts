import { Buffer } from "node:buffer";
import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler";
import { describe, expect, test } from "vitest";
import type { ReportContent } from "../content/blocks.js";
import { reportContent } from "../content/report-content.js";
import { EXAMPLE_NAMES, exampleCase, HOSTILE_TEXTS, hostileCase, sampleReport } from "../sample-report.test-support.js";
import { pdfFacts } from "./pdf-facts.test-support.js";
import { pdfText } from "./pdf-text.test-support.js";
import { renderPdf } from "./render-pdf.js";
import { TEMPLATE } from "./template.js";

const contentOf = (name: string, language: "en" | "es" = "en"): ReportContent => reportContent(sampleReport(exampleCase(name), language));

describe.each(EXAMPLE_NAMES)("the PDF of %s", (name) => {
  const content = contentOf(name, name === "four-wheel-drive" ? "es" : "en");
  const pdf = renderPdf(content, { paper: "a4" });
  const facts = pdfFacts(pdf);

  test("is an archival, tagged PDF in its language", () => {
    expect(facts.header).toBe("%PDF-1.7");
    expect(facts.xmp).toMatch(/<pdfaid:part>2<\/pdfaid:part>/);
    expect(facts.xmp).toMatch(/<pdfaid:conformance>A<\/pdfaid:conformance>/);
    expect(facts.catalogue).toMatch(/\/MarkInfo\s*<<[^>]*\/Marked true/);
    expect(facts.catalogue).toContain(`/Lang (${content.language})`);
    expect(facts.catalogue).toContain("/StructTreeRoot");
  });

  test("embeds every font, and draws its figures as lines", () => {
    expect(facts.fonts.length).toBeGreaterThan(1);
    expect(facts.fonts.every(({ embedded }) => embedded)).toBe(true);
    expect(facts.images).toBe(0);
  });

  test("prints all that the content says, in its order", async () => {
    const text = await pdfText(pdf);
    let from = 0;
    for (const { title } of content.sections) {
      const found = text.indexOf(title.replaceAll(/\s/g, ""), from);
      expect(found, title).toBeGreaterThanOrEqual(0);
      from = found;
    }
    const cells = content.sections.flatMap(({ blocks }) => blocks).flatMap((block) => (block.kind === "table" ? block.rows.flat() : []));
    expect(cells.length).toBeGreaterThan(20);
    for (const cell of cells) expect(text).toContain(cell.text.replaceAll(/\s/g, ""));
  });
});

test("paper is what was asked for", () => {
  const content = contentOf("one-piece");
  expect(pdfFacts(renderPdf(content, { paper: "a4" })).mediaBoxes[0]).toBe("0 0 595.2756 841.8898");
  expect(pdfFacts(renderPdf(content, { paper: "letter" })).mediaBoxes[0]).toBe("0 0 612 792");
});

test("every page says which of how many it is", async () => {
  const pdf = renderPdf(contentOf("two-piece"), { paper: "a4" });
  const pages = pdfFacts(pdf).mediaBoxes.length;
  expect(pages).toBeGreaterThan(3);
  const text = await pdfText(pdf);
  for (let page = 1; page <= pages; page++) expect(text).toContain(`Page${page}of${pages}`);
});

test("the same content gives the same bytes, another date does not", () => {
  const content = contentOf("two-piece");
  const first = Buffer.from(renderPdf(content, { paper: "letter" }));
  expect(first.equals(Buffer.from(renderPdf(structuredClone(content), { paper: "letter" })))).toBe(true);
  expect(first.equals(Buffer.from(renderPdf({ ...content, date: "2026-05-19" }, { paper: "letter" })))).toBe(false);
});

test.each(HOSTILE_TEXTS)("%j is printed letter by letter", async (text) => {
  const printed = await pdfText(renderPdf(reportContent(sampleReport(hostileCase(text))), { paper: "a4" }));
  expect(printed).toContain(text.replaceAll(/\s/g, ""));
});

test.each([
  ["🔧 shop", "[U+1F527]shop"],
  ["漢字", "[U+6F22][U+5B57]"],
  ["a\u202Eb", "a[U+202E]b"],
  ["👩‍🔧", "[U+1F469][U+200D][U+1F527]"],
])("%j, which no font has, is printed by its code", async (text, expected) => {
  expect(await pdfText(renderPdf(reportContent(sampleReport(hostileCase(text))), { paper: "a4" }))).toContain(expected);
});

test("the template compiles without a warning", () => {
  const result = NodeCompiler.create().compile({
    mainFileContent: TEMPLATE,
    inputs: { content: JSON.stringify({ ...contentOf("two-piece"), codes: [] }), paper: "a4" },
  });
  expect(result.hasError()).toBe(false);
  const warnings: readonly { readonly message: string }[] = result.takeWarnings()?.shortDiagnostics ?? [];
  expect(warnings.map(({ message }) => message)).toEqual([]);
});
