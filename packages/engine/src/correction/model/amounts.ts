import type { Adjuster } from "./adjuster.js";
import type { Stock } from "./stock.js";

/** Steps added up in floating point may fall short of the end by this share of a step. */
const END_OF_RANGE = 1e-6;

/** Two sizes closer than this share of a step are one. */
const SAME_SIZE = 1e-9;

/** The amounts a change may have, without nought, rising. What is fitted may always be taken out; a spacer beyond that may not. */
export function amountsOf(adjuster: Adjuster, mounting: "below-crossmember" | "above-crossmember" | null = null): readonly number[] {
  const listed = adjuster.kind === "rephase" ? splineSteps(adjuster.splineTeeth) : stockSizes(adjuster.stock);
  const taken = "fitted" in adjuster && adjuster.fitted !== 0 ? [...listed, -adjuster.fitted] : listed;
  const step = stepOf(adjuster);
  const rising = taken.filter((size) => Math.abs(size) > SAME_SIZE * step).sort((a, b) => a - b);
  const distinct = rising.filter((size, k) => k === 0 || size - (rising[k - 1] as number) > SAME_SIZE * step);
  return distinct.filter((size) => !exceedsFitted(adjuster, size, mounting));
}

/** Whether an amount would take out more than is fitted. Only spacers can run out; a wedge turns round and a bracket slides both ways. */
export function exceedsFitted(adjuster: Adjuster, amount: number, mounting: "below-crossmember" | "above-crossmember" | null): boolean {
  if (adjuster.kind !== "support-drop" && adjuster.kind !== "mount-spacer") return false;
  const outward = adjuster.kind === "support-drop" && mounting === "above-crossmember" ? -1 : 1;
  return outward * (adjuster.fitted + amount) < -SAME_SIZE * Math.abs(adjuster.fitted) - Number.EPSILON;
}

/** The smallest gap between sizes (nought counted), > 0: the measure for "smaller change". */
export function stepOf(adjuster: Adjuster): number {
  if (adjuster.kind === "rephase") return 1;
  if (adjuster.stock.kind === "range") return adjuster.stock.step;
  const sizes = [...adjuster.stock.sizes, 0].sort((a, b) => a - b);
  let least = Number.POSITIVE_INFINITY;
  for (let k = 1; k < sizes.length; k++) {
    const gap = (sizes[k] as number) - (sizes[k - 1] as number);
    if (gap > 0 && gap < least) least = gap;
  }
  return Number.isFinite(least) ? least : 1;
}

function stockSizes(stock: Stock): readonly number[] {
  if (stock.kind === "sizes") return stock.sizes;
  const count = Math.floor((stock.maximum - stock.minimum) / stock.step + END_OF_RANGE);
  // Whole multiples of the step where the range starts on one, so that 0.3 is not 0.1 + 0.1 + 0.1.
  const first = stock.minimum / stock.step;
  const whole = Math.abs(first - Math.round(first)) < END_OF_RANGE;
  return Array.from({ length: count + 1 }, (_, k) => (whole ? (Math.round(first) + k) * stock.step : stock.minimum + k * stock.step));
}

/** Steps that give distinct phasings: phasings repeat every half turn, which an odd number of teeth reaches only after a whole one. */
function splineSteps(teeth: number): readonly number[] {
  const count = teeth % 2 === 0 ? teeth / 2 : teeth;
  const first = -Math.floor((count - 1) / 2);
  return Array.from({ length: count }, (_, k) => first + k);
}
