import type { Instruction } from "../consequence/instruction.js";
import { planInstructions } from "../consequence/plan-instructions.js";
import { correctionModel, refusals } from "../geometry/correction-model.js";
import { drawRecords } from "../geometry/draw-records.js";
import { type Change, type CorrectionInput, failure, type Outcome, success } from "../model/index.js";
import { checkChanges } from "../predict/check-changes.js";
import { newJudge } from "./judge.js";
import { limitReport } from "./limit-report.js";

/**
 * The steps of the work for changes that somebody chose by hand, as a plan would give them: lengths in millimetres and angles in degrees in the params, with the
 * cautions that belong to each. At most one change of each adjuster; changes of nought are left out. Refuses as `predict` does.
 */
export function instructionsFor(input: CorrectionInput, changes: readonly Change[]): Outcome<readonly Instruction[]> {
  const refused = refusals(input);
  if (refused.length > 0) return failure(...refused);
  const model = correctionModel(input);
  const checked = checkChanges(model, changes);
  if (!checked.ok) return checked;
  // What an instruction says rests on the best estimate alone, so nothing is drawn.
  const judge = newJudge(model, drawRecords(model, 0, input.seed));
  const before = limitReport(judge, new Float64Array(model.adjusters.length));
  const made = changes.filter(({ amount }) => amount !== 0).toSorted((a, b) => (a.adjusterId < b.adjusterId ? -1 : 1));
  return success(planInstructions(model, made, before, limitReport(judge, checked.value)));
}
