import { analysisToJson } from "@halfturn/casefile";
import { acceptStops, recordAcceptance } from "../analysis/accept-stops.js";
import { analyseCase, answersAnything, failsStrictly } from "../analysis/analyse-case.js";
import { chooseGauging } from "../analysis/choose-gauging.js";
import { writeFault } from "../files/file-fault.js";
import { fileName, readCase } from "../files/read-case.js";
import { type CliContext, fail } from "../program/context.js";
import { BAD_USE, UNANSWERED } from "../program/exit-code.js";
import { jsonText } from "../program/json-text.js";
import { analysisLines } from "../render/analysis.js";
import { pageWidth } from "../render/wrap.js";
import type { AnalyseFlags } from "./analyse-flags.js";

/** Works out a case and prints it for people, or as the JSON contract. */
export async function runAnalyse(this: CliContext, flags: AnalyseFlags, path: string): Promise<void> {
  const { words, paint } = this;
  const read = await readCase(path, this);
  if (!read.ok) return fail(this, BAD_USE, read.lines);
  const chosen = chooseGauging(read.case, flags, words);
  if (!chosen.ok) return fail(this, chosen.exitCode, [chosen.line]);

  const settings = { draws: flags.draws, seed: flags.seed };
  const before = analyseCase(read.case, chosen.choice, { ...settings, accepted: [] });
  const acceptance = acceptStops(flags.accept ?? [], before, read.case, path, this);
  const analysed =
    acceptance.accepted.length === 0
      ? before
      : analyseCase(acceptance.document, chosen.choice, { ...settings, accepted: acceptance.accepted });
  try {
    await recordAcceptance(acceptance, read.case, path, this);
  } catch (error) {
    return fail(this, BAD_USE, [writeFault(error, path, words.terminal)]);
  }

  const json = analysisToJson(analysed, { seed: flags.seed });
  for (const line of acceptance.lines) this.process.stderr.write(`${line}\n`);
  if (flags.json) this.process.stdout.write(jsonText(json));
  else {
    const view = { words, paint, width: pageWidth(this.process.stdout.columns) };
    this.process.stdout.write(`${analysisLines(json, acceptance.document, flags.draws, view).join("\n")}\n`);
  }
  if (!answersAnything(analysed)) return fail(this, UNANSWERED, [words.terminal.analysed.nothing(fileName(path, words))]);
  if (flags.strict && failsStrictly(analysed)) this.process.exitCode = UNANSWERED;
}
