import { parseChanges, predictionToJson } from "@halfturn/casefile";
import { predict } from "@halfturn/engine/correction";
import { changeProblemText } from "@halfturn/words";
import { refuse } from "../correction/correction-refusal.js";
import { distinctFindings } from "../correction/distinct-findings.js";
import { prepareCorrection } from "../correction/prepare-correction.js";
import { type CliContext, fail } from "../program/context.js";
import { BAD_USE, UNANSWERED } from "../program/exit-code.js";
import { predictionLines } from "../render/prediction.js";
import { pageWidth } from "../render/wrap.js";
import type { PredictFlags } from "./predict-flags.js";

/** Says what changes would do, for people beside what stands now, or as the JSON contract. */
export async function runPredict(this: CliContext, flags: PredictFlags, path: string): Promise<void> {
  const { words, paint } = this;
  const prepared = await prepareCorrection(flags, path, this);
  if (!prepared) return;
  const { basis, findings } = prepared;
  const changes = parseChanges(flags.change, basis.input);
  if (!changes.ok) {
    const lines = changes.problems.map((problem) => `--change: ${changeProblemText(words, problem)}`);
    return fail(this, changes.problems.some(({ code }) => code === "no-adjusters") ? UNANSWERED : BAD_USE, [...new Set(lines)]);
  }
  const after = predict(basis.input, changes.changes);
  if (!after.ok) return refuse(after.reasons, findings, basis.document, path, this);
  const json = predictionToJson(after.value, basis);
  if (flags.json) {
    this.process.stdout.write(`${JSON.stringify(json, null, 2)}\n`);
    return;
  }
  const before = predict(basis.input, []);
  if (!before.ok) return refuse(before.reasons, findings, basis.document, path, this);
  const view = { words, paint, width: pageWidth(this.process.stdout.columns) };
  this.process.stdout.write(
    `${predictionLines(predictionToJson(before.value, basis), json, basis, { draws: flags.draws, findings: distinctFindings(before.value) }, view).join("\n")}\n`,
  );
}
