import type { SampleReader } from "@halfturn/engine/signal";

/** When samples were taken. */
type Moments = Pick<SampleReader, "rate" | "start" | "length">;

/** Whether two runs hold the same moments, but for the rounding of their times. */
export const covers = (run: Moments, other: Moments): boolean =>
  run.length === other.length &&
  Math.abs(run.start - other.start) * other.rate < 0.01 &&
  Math.abs(run.rate / other.rate - 1) * run.length < 0.01;
