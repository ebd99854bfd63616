import type { Measurement } from "./measure.js";

/** Greatest allowed ratio of each benchmark, by name. */
export type Budgets = Readonly<Record<string, number>>;

/** A measurement beside its budget. */
export interface Judged extends Measurement {
  readonly budget: number;
  readonly within: boolean;
}

/** Puts every measurement beside its budget. A benchmark without a budget, or a budget without a benchmark, is a mistake in the bench itself. */
export function judge(measurements: readonly Measurement[], budgets: Budgets): readonly Judged[] {
  const orphan = Object.keys(budgets).find((name) => !measurements.some((measurement) => measurement.name === name));
  if (orphan !== undefined) throw new RangeError(`budgets.json has ${orphan}, which no benchmark is named`);
  return measurements.map((measurement) => {
    const budget = budgets[measurement.name];
    if (budget === undefined) throw new RangeError(`${measurement.name} has no budget in budgets.json`);
    return { ...measurement, budget, within: measurement.ratio <= budget };
  });
}
