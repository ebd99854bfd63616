/** One thing whose speed is kept under a budget. */
export interface Benchmark {
  /** The key of its budget in budgets.json; the name of its file. */
  readonly name: string;
  /** What one run does, for the table. */
  readonly what: string;
  /**
   * Builds the inputs and returns the run itself, to be timed again and again.
   * The run returns a number made from its result, so that no compiler can leave the work out.
   */
  readonly prepare: () => () => number;
}
