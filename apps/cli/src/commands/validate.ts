import { analyseCase } from "../analysis/analyse-case.js";
import { fileName, readCase } from "../files/read-case.js";
import { type CliContext, fail } from "../program/context.js";
import { BAD_USE } from "../program/exit-code.js";
import { summaryLines } from "../render/summary.js";
import { pageWidth } from "../render/wrap.js";
import type { ValidateFlags } from "./validate-flags.js";

/** What is missing does not depend on the draws, so few will do. */
const FEW_DRAWS = 100;

/** Says that a case is sound and what it still lacks, or every problem it has. */
export async function runValidate(this: CliContext, _flags: ValidateFlags, path: string): Promise<void> {
  const read = await readCase(path, this);
  if (!read.ok) return fail(this, BAD_USE, read.lines);
  const analysed = analyseCase(read.case, {}, { draws: FEW_DRAWS, seed: 1, accepted: [] });
  const view = { words: this.words, paint: this.paint, width: pageWidth(this.process.stdout.columns) };
  const findings = analysed.flatMap(({ analysis }) => analysis.findings);
  this.process.stdout.write(`${summaryLines(fileName(path, this.words), read.case, findings, view).join("\n")}\n`);
}
