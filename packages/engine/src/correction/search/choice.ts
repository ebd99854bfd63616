import type { AdjusterModel } from "../geometry/adjuster-model.js";
import type { CorrectionModel, DrivelineModel } from "../geometry/correction-model.js";
import { amountUnit } from "../model/index.js";
import type { Ranked } from "./best-first.js";
import type { Subset } from "./candidate-space.js";
import { slipKnown } from "./hard-limits.js";
import type { Judge } from "./judge.js";
import type { PlannedChange, RankedChoice } from "./plan-result.js";

/** The changes of a candidate, in the order of the adjusters' ids. */
export const changesOf = (model: CorrectionModel, subset: Subset, places: ArrayLike<number>): readonly PlannedChange[] =>
  subset.adjusters.map((index, k) => {
    const { adjuster } = model.adjusters[index] as AdjusterModel;
    const amount = subset.amounts[k]?.[places[k] as number] as number;
    return { adjusterId: adjuster.id, kind: adjuster.kind, amount, unit: amountUnit(adjuster.kind) };
  });

/** A search result in words of the input. */
export function choiceOf({ model, drawn }: Judge, { subset, places, key }: Ranked): RankedChoice {
  const probability = (drawn.draws - key.fails) / drawn.draws;
  const moved = subset.adjusters.some((k) => model.adjusters[k]?.adjuster.kind !== "rephase") ? subset.drivelines : [];
  const slipsKnown = moved.every((d) => {
    const on = model.drivelines[d] as DrivelineModel;
    return on.input.driveline.sections.length === 0 || (slipKnown(on) && on.topology.armKnown);
  });
  return {
    changes: changesOf(model, subset, places),
    probabilityWithin: slipsKnown ? probability : null,
    probabilityOfLimits: probability,
    labour: key.labour,
    margin: key.margin,
  };
}
