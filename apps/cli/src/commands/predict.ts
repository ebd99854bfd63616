import { parseChanges, predictionToJson } from "@halfturn/casefile";
import { predict, reason } from "@halfturn/engine/correction";
import { changeProblemText } from "@halfturn/words";
import { refuse } from "../correction/correction-refusal.js";
import { groundFindings } from "../correction/ground-findings.js";
import { prepareCorrection } from "../correction/prepare-correction.js";
import { type CliContext, fail } from "../program/context.js";
import { BAD_USE } from "../program/exit-code.js";
import { jsonText } from "../program/json-text.js";
import { predictionLines } from "../render/prediction.js";
import { pageWidth } from "../render/wrap.js";
import type { PredictFlags } from "./predict-flags.js";

/** Says what changes would do, for people beside what stands now, or as the JSON contract. */
export async function runPredict(this: CliContext, flags: PredictFlags, path: string): Promise<void> {
  const { words, paint } = this;
  const prepared = await prepareCorrection(flags, path, this);
  if (!prepared) return;
  const { basis, findings } = prepared;
  if (basis.input.adjusters.length === 0)
    return refuse([reason("correction.no-adjusters", "adjusters")], findings, basis.document, path, this);
  const changes = parseChanges(flags.change, basis.input);
  if (!changes.ok) {
    return fail(this, BAD_USE, [...new Set(changes.problems.map((problem) => `--change: ${changeProblemText(words, problem)}`))]);
  }
  const after = predict(basis.input, changes.changes);
  if (!after.ok) return refuse(after.reasons, findings, basis.document, path, this);
  if (!(await prepared.record())) return;
  const json = predictionToJson(after.value, basis);
  if (flags.json) {
    this.process.stdout.write(jsonText(json));
    return;
  }
  const before = predict(basis.input, []);
  if (!before.ok) return refuse(before.reasons, findings, basis.document, path, this);
  const view = { words, paint, width: pageWidth(this.process.stdout.columns) };
  this.process.stdout.write(
    `${predictionLines(predictionToJson(before.value, basis), json, basis, { draws: flags.draws, findings: groundFindings(basis) }, view).join("\n")}\n`,
  );
}
