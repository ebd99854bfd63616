/** The numbers behind the sentence about bench rule and exact answer. All in degrees. */
export interface BenchComparison {
  /** Operating angles in power order; empty where not all are known. */
  readonly anglesDeg: readonly number[];
  /** Sign of each angle in the sum; null where the rule does not apply. */
  readonly signs: readonly (1 | -1)[] | null;
  readonly benchDeg: number | null;
  readonly equivalentDeg: number;
}

/** Sentences made from results. */
export interface Explanations {
  /** Why the bench rule and the exact answer differ, or why the bench rule says nothing here. */
  readonly bench: (of: BenchComparison) => string;
  /** Says when no reading stands out. */
  readonly nothingToRepeat: string;
  /** Stands over all numbers while a stop finding is open. */
  readonly notRoadAngles: string;
  /** Which phasing would leave least. */
  readonly bestPhasing: (section: string, degrees: number) => string;
  /** What the ± and the intervals mean. */
  readonly intervalsMean: string;
}
