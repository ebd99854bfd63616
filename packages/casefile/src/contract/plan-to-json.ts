import type { Block, LimitKind, PlanResult, RankedChoice, StateLimitUse } from "@halfturn/engine/correction";
import type { Radians } from "@halfturn/engine/units";
import { fileUnitOf, writtenAmount, writtenChange } from "../correction/amounts.js";
import type { BlockJson, ChoiceJson, LimitUseJson, PlanJson } from "./correction-contract.js";
import { type CorrectionBasis, missingToJson, stateToJson } from "./prediction-to-json.js";
import { degrees } from "./quantity.js";

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
    doingNothing: choice(result.doingNothing),
    bestSingleChange: orNull(result.bestSingleChange),
    bestWithoutAxle: orNull(result.bestWithoutAxle),
    optima: result.optima.map(({ adjusterId, amount, margin }) => {
      const adjuster = input.adjusters.find(({ id }) => id === adjusterId);
      const unit = fileUnitOf(adjuster?.kind ?? "mount-spacer");
      return { adjuster: adjusterId, amount: writtenAmount(amount, unit), unit, margin };
    }),
    missing: result.missing.map(missingToJson),
    notUsed: result.notUsed,
  };
}

const choiceToJson = (
  { changes, probabilityWithin, probabilityOfLimits, labour, margin }: RankedChoice,
  { input }: CorrectionBasis,
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

/** Limits whose values are angles; the others are accelerations. */
const ANGLES: ReadonlySet<LimitKind> = new Set<LimitKind>(["joint-over", "joint-under", "equivalent-angle"]);

const limitUseToJson = ({ limit, of, state, drivelineId, value, bound, margin }: StateLimitUse): LimitUseJson => ({
  limit,
  of,
  state,
  driveline: drivelineId,
  ...(ANGLES.has(limit)
    ? { valueDeg: degrees(value as Radians), limitDeg: degrees(bound as Radians) }
    : { valueRadS2: value, limitRadS2: bound }),
  margin,
});
