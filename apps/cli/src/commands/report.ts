import { renderHtml, renderPdf, reportContent, reportedCorrections, reportedGaugings } from "@halfturn/report";
import { answersAnything } from "../analysis/analyse-case.js";
import { writeFault } from "../files/file-fault.js";
import { fileName, readCase } from "../files/read-case.js";
import { writeWhole } from "../files/write-whole.js";
import { type CliContext, fail } from "../program/context.js";
import { BAD_USE, UNANSWERED } from "../program/exit-code.js";
import { VERSION } from "../program/version.js";
import type { ReportFlags } from "./report-flags.js";

/** Writes the report of a case. */
export async function runReport(this: CliContext, { output, paper, seed, draws }: ReportFlags, path: string): Promise<void> {
  const { words } = this;
  const read = await readCase(path, this);
  if (!read.ok) return fail(this, BAD_USE, read.lines);
  const settings = { seed, draws, accepted: [] };
  const gaugings = reportedGaugings(read.case, settings);
  if (!answersAnything(gaugings)) return fail(this, UNANSWERED, [words.terminal.analysed.nothing(fileName(path, words))]);
  const corrections = reportedCorrections(read.case, settings, gaugings);
  const content = reportContent({
    case: read.case,
    gaugings,
    corrections,
    language: words.language,
    units: words.numbers.units,
    date: this.now(),
    toolVersion: VERSION,
  });
  try {
    await writeWhole(output.path, output.kind === "html" ? renderHtml(content) : renderPdf(content, { paper }), "replace", this.newId());
  } catch (error) {
    return fail(this, BAD_USE, [writeFault(error, output.path, words.terminal)]);
  }
  this.process.stdout.write(`${words.terminal.made.reportWritten(output.path)}\n`);
}
