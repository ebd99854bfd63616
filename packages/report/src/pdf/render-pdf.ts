import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler";
import type { ReportContent } from "../content/blocks.js";
import { codeOf, showInvisible } from "../content/show-invisible.js";
import { missingCharacters } from "./missing-characters.js";
import { mapStrings, showCodes } from "./show-codes.js";
import { withDocumentFont } from "./svg-font.js";
import { TEMPLATE } from "./template.js";

export type Paper = "a4" | "letter";

/** The paper sizes by the names that the typesetter gives them. */
const PAPERS: Readonly<Record<Paper, string>> = { a4: "a4", letter: "us-letter" };

/** An archival format with tags and a reading order. */
const STANDARD = "a-2a";

/** Each round finds characters that the last one hid; a report that needs more is broken. */
const ROUNDS = 4;

type Compiled = { readonly pdf: Uint8Array } | { readonly refused: string };

function compile(compiler: NodeCompiler, content: ReportContent, codes: readonly string[], paper: Paper): Compiled {
  const inputs = { content: JSON.stringify({ ...content, codes }), paper: PAPERS[paper] };
  const result = compiler.compile({ mainFileContent: TEMPLATE, inputs });
  const document = result.result;
  if (!document) throw new Error(`The report's template does not compile: ${JSON.stringify(result.takeDiagnostics()?.shortDiagnostics)}`);
  const creationTimestamp = Date.parse(`${content.date.slice(0, 10)}T00:00:00Z`) / 1000;
  try {
    return { pdf: compiler.pdf(document, { pdfStandard: STANDARD, creationTimestamp }) };
  } catch (error) {
    return { refused: String(error) };
  }
}

const fitFigures = (content: ReportContent): ReportContent => ({
  ...content,
  sections: content.sections.map((section) => ({
    ...section,
    blocks: section.blocks.map((block) => (block.kind === "figure" ? { ...block, svg: withDocumentFont(block.svg) } : block)),
  })),
});

/**
 * The report as an archival, tagged PDF (PDF/A-2a) with vector figures and embedded fonts; the same content and paper give the same bytes.
 * A character that the fonts lack is printed as its code, and a line in the head says so.
 * For servers: the compiler runs in this process and keeps up to a megabyte for each document, so render in a child process and replace it after a hundred documents.
 */
export function renderPdf(content: ReportContent, { paper }: { readonly paper: Paper }): Uint8Array {
  const fitted = fitFigures(mapStrings(content, showInvisible));
  const compiler = NodeCompiler.create();
  const missing = new Set<string>();
  for (let round = 0; round < ROUNDS; round++) {
    const compiled = compile(
      compiler,
      mapStrings(fitted, (text) => showCodes(text, missing)),
      [...missing].map(codeOf),
      paper,
    );
    if ("pdf" in compiled) return compiled.pdf;
    const fresh = [...missingCharacters(compiled.refused)].filter((character) => !missing.has(character));
    if (fresh.length === 0) throw new Error(`The archival PDF was refused: ${compiled.refused}`);
    for (const character of fresh) missing.add(character);
  }
  throw new Error("The archival PDF was refused again and again for characters without a glyph.");
}
