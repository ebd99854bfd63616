import { type Case, type CorrectionBasis, correctionBasis } from "@halfturn/casefile";
import type { Finding, FindingCode } from "@halfturn/engine/findings";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { type Acceptance, acceptStops, recordAcceptance } from "../analysis/accept-stops.js";
import { chooseGauging } from "../analysis/choose-gauging.js";
import { writeFault } from "../files/file-fault.js";
import { fileName, readCase } from "../files/read-case.js";
import { type CliContext, fail } from "../program/context.js";
import { BAD_USE, UNANSWERED } from "../program/exit-code.js";

export interface CorrectionFlags {
  readonly gauging?: number;
  readonly accept?: readonly FindingCode[];
  readonly seed: number;
  readonly draws: number;
}

/** A case made ready for `predict` and `plan`. */
export interface PreparedCorrection {
  /** The case as its file had it; the basis holds it with what was accepted. */
  readonly asRead: Case;
  readonly basis: CorrectionBasis;
  readonly findings: readonly Finding[];
  /** Writes what was accepted into the case and says so: only once an answer is there. False once a refusal was printed. */
  readonly record: () => Promise<boolean>;
}

/** Reads a case, chooses its gaugings and takes in what is accepted, with nothing written yet; null once a refusal was printed. */
export async function prepareCorrection(flags: CorrectionFlags, path: string, context: CliContext): Promise<PreparedCorrection | null> {
  const { words } = context;
  const read = await readCase(path, context);
  if (!read.ok) return refused(BAD_USE, read.lines, context);
  const chosen = chooseGauging(read.case, flags, words);
  if (!chosen.ok) return refused(chosen.exitCode, [chosen.line], context);
  const basisOf = (document: Case): CorrectionBasis =>
    correctionBasis(document, { defaults: DEFAULT_LIMITS, draws: flags.draws, seed: flags.seed, gauging: flags.gauging });

  const before = basisOf(read.case);
  if (before.input.drivelines.length === 0) {
    return refused(UNANSWERED, [words.terminal.analysed.nothing(fileName(path, words))], context);
  }
  const gauged = before.input.drivelines.map(({ poses }) => ({ analysis: { findings: poses.findings } }));
  const acceptance: Acceptance = acceptStops(flags.accept ?? [], gauged, read.case, path, context);
  const basis = acceptance.accepted.length === 0 ? before : basisOf(acceptance.document);
  const record = async (): Promise<boolean> => {
    try {
      await recordAcceptance(acceptance, read.case, path, context);
    } catch (error) {
      fail(context, BAD_USE, [writeFault(error, path, words.terminal)]);
      return false;
    }
    for (const line of acceptance.lines) context.process.stderr.write(`${line}\n`);
    return true;
  };
  return { asRead: read.case, basis, findings: gauged.flatMap(({ analysis }) => analysis.findings), record };
}

function refused(exitCode: typeof UNANSWERED | typeof BAD_USE, lines: readonly string[], context: CliContext): null {
  fail(context, exitCode, lines);
  return null;
}
