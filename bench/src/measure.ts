import type { Benchmark, Run } from "./benchmark.js";
import { calibrationKernel } from "./kernel.js";

/** What was measured; `ratio` is yardsticks (kernels, or runs of a peer) per run, the figure that budgets are set on. */
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

async function time(clock: Clock, run: Run): Promise<number> {
  const started = clock();
  const result = await run();
  const elapsed = clock() - started;
  if (!Number.isFinite(result)) throw new RangeError(`a run gave ${result}, so what was timed is not the work`);
  return elapsed;
}

/** Times run and yardstick in turn, so that a busy neighbour slows both, and takes the median of the rounds' ratios. */
export async function measure(benchmark: Benchmark, clock: Clock): Promise<Measurement> {
  const run = await benchmark.prepare();
  const yardstick = (await benchmark.preparePeer?.()) ?? calibrationKernel;
  const rounds: Pick<Measurement, "kernelMs" | "runMs" | "ratio">[] = [];
  for (let round = 0; round < WARM_UP_ROUNDS + ROUNDS; round++) {
    const kernelMs = await time(clock, yardstick);
    const runMs = await time(clock, run);
    if (round >= WARM_UP_ROUNDS) rounds.push({ kernelMs, runMs, ratio: runMs / kernelMs });
  }
  const middle = (key: "kernelMs" | "runMs" | "ratio") => median(rounds.map((round) => round[key]));
  return { name: benchmark.name, what: benchmark.what, runMs: middle("runMs"), kernelMs: middle("kernelMs"), ratio: middle("ratio") };
}
