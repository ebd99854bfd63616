import { type Block, limitParams, type PlanResult, type RankedChoice, type StateLimitUse } from "@halfturn/engine/correction";
import { fileUnitOf, writtenAmount, writtenChange } from "../correction/amounts.js";
import type { CorrectionBasis } from "../correction/correction-basis.js";
import type { BlockJson, ChoiceJson, LimitUseJson, PlanJson } from "./correction-contract.js";
import { learnedFrom, missingToJson, stateToJson } from "./prediction-to-json.js";

/** A plan as `plan --json` prints it. */
export function planToJson(result: PlanResult, basis: CorrectionBasis): PlanJson {
  const { input } = basis;
  const choice = (found: RankedChoice): ChoiceJson => choiceToJson(found, basis);
  const orNull = (found: RankedChoice | null): ChoiceJson | null => found && choice(found);
  return {
    format: "halfturn-plan",
    version: 1,
    seed: input.seed,
    examined: result.examined,
    plans: result.plans.map((plan) => ({
      ...choice(plan),
      tightest: plan.tightest && limitUseToJson(plan.tightest),
      states: plan.states.map((state) => stateToJson(state, basis)),
      instructions: plan.instructions,
    })),
    blockedBy: result.blockedBy.map((block) => blockToJson(block, basis)),
    nearest: orNull(result.nearest),
    doingNothing: {
      ...choice(result.doingNothing),
      tightest: result.doingNothing.tightest && limitUseToJson(result.doingNothing.tightest),
    },
    bestSingleChange: orNull(result.bestSingleChange),
    bestWithoutAxle: orNull(result.bestWithoutAxle),
    optima: result.optima.map(({ adjusterId, amount, margin }) => {
      const adjuster = input.adjusters.find(({ id }) => id === adjusterId);
      const unit = fileUnitOf(adjuster?.kind ?? "mount-spacer");
      return { adjuster: adjusterId, amount: writtenAmount(amount, unit), unit, margin };
    }),
    missing: result.missing.map(missingToJson),
    notUsed: result.notUsed,
    leftOut: result.leftOut,
    learnedFrom: learnedFrom(basis),
  };
}

const choiceToJson = (
  { changes, probabilityWithin, probabilityOfLimits, labour, margin }: RankedChoice,
  { input }: Pick<CorrectionBasis, "input">,
): ChoiceJson => ({
  changes: changes.map((change) => writtenChange(input, change)),
  probabilityWithin,
  probabilityOfLimits,
  labour,
  // JSON has no infinity.
  margin: Number.isFinite(margin) ? margin : null,
});

const blockToJson = (block: Block, { input }: CorrectionBasis): BlockJson =>
  block.kind === "limit"
    ? { kind: "limit", ...limitUseToJson(block.use) }
    : { kind: "hard", ...block.reason, changes: block.changes.map((change) => writtenChange(input, change)) };

const limitUseToJson = (use: StateLimitUse): LimitUseJson => ({ ...limitParams(use), margin: use.margin });
