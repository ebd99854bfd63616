import type { Benchmark } from "./benchmark.js";
import { calibrationKernel } from "./kernel.js";

/** What was measured; `ratio` is kernels per run, the figure that budgets are set on. */
export interface Measurement {
  readonly name: string;
  readonly what: string;
  readonly runMs: number;
  readonly kernelMs: number;
  readonly ratio: number;
}

/** A monotonic clock in milliseconds. */
export type Clock = () => number;

/** Odd, so that the median is one of the rounds. */
const ROUNDS = 15;
const WARM_UP_ROUNDS = 3;

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted[Math.floor(sorted.length / 2)];
  if (middle === undefined) throw new RangeError("no values to take the median of");
  return middle;
}

function time(clock: Clock, run: () => number): number {
  const started = clock();
  const result = run();
  const elapsed = clock() - started;
  if (!Number.isFinite(result)) throw new RangeError(`a run gave ${result}, so what was timed is not the work`);
  return elapsed;
}

/** Times run and kernel in turn, so that a busy neighbour slows both, and takes the median of the rounds' ratios. */
export function measure(benchmark: Benchmark, clock: Clock): Measurement {
  const run = benchmark.prepare();
  const rounds = Array.from({ length: WARM_UP_ROUNDS + ROUNDS }, () => {
    const kernelMs = time(clock, calibrationKernel);
    const runMs = time(clock, run);
    return { kernelMs, runMs, ratio: runMs / kernelMs };
  }).slice(WARM_UP_ROUNDS);
  const middle = (key: "kernelMs" | "runMs" | "ratio") => median(rounds.map((round) => round[key]));
  return { name: benchmark.name, what: benchmark.what, runMs: middle("runMs"), kernelMs: middle("kernelMs"), ratio: middle("ratio") };
}
