import type { CorrectionModel } from "../geometry/correction-model.js";
import { type Change, exceedsFitted, type Outcome, type Reason, reason, success, toMillimetres } from "../model/index.js";

/** The changes as one amount for every adjuster of the model, or why they cannot be made. Several changes of one adjuster add up. */
export function checkChanges(model: CorrectionModel, changes: readonly Change[]): Outcome<Float64Array> {
  const amounts = new Float64Array(model.adjusters.length);
  const reasons: Reason[] = [];
  for (const { adjusterId, amount } of changes) {
    const k = model.adjusters.findIndex(({ adjuster }) => adjuster.id === adjusterId);
    if (k < 0) reasons.push(reason("correction.unknown-adjuster", "adjusters", { adjuster: adjusterId }));
    else amounts[k] = (amounts[k] as number) + amount;
  }
  model.adjusters.forEach(({ adjuster, unusable, mounting }, k) => {
    const amount = amounts[k] as number;
    const params = { adjuster: adjuster.id };
    if (!Number.isFinite(amount)) reasons.push(reason("correction.amount-not-finite", adjuster.path, params));
    else if (amount !== 0 && unusable) reasons.push(unusable);
    else if (amount !== 0 && adjuster.kind === "rephase" && !Number.isInteger(amount)) {
      reasons.push(reason("correction.spline-not-whole", adjuster.path, { ...params, steps: amount }));
    } else if (amount !== 0 && exceedsFitted(adjuster, amount, mounting)) {
      const fittedMm = toMillimetres("fitted" in adjuster ? adjuster.fitted : 0);
      reasons.push(reason("correction.removal-exceeds-fitted", adjuster.path, { ...params, amountMm: toMillimetres(amount), fittedMm }));
    }
  });
  return reasons.length > 0 ? { ok: false, reasons } : success(amounts);
}
