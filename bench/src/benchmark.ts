/** Work to be timed. It gives a number made from its result, so that no compiler can leave the work out. */
export type Run = () => number | Promise<number>;

/** One thing whose speed is kept under a budget. */
export interface Benchmark {
  /** The key of its budget in budgets.json; the name of its file. */
  readonly name: string;
  /** What one run does, for the table. */
  readonly what: string;
  /** Builds the inputs and gives the run itself, to be timed again and again. */
  readonly prepare: () => Run | Promise<Run>;
  /** The same work by a well-kept library, to be timed in place of the kernel. */
  readonly preparePeer?: () => Run | Promise<Run>;
}
