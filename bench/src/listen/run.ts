import { type AttributionInput, attributionSteps } from "@halfturn/engine/attribution";
import { orderMapsSteps, type SignalResult } from "@halfturn/engine/signal";
import { calibrationKernel } from "../kernel.js";
import { median } from "../measure.js";
import { AXES, inputOf, MINUTES, RATE } from "./long-drive.js";
import { type Heard, scipySeconds } from "./scipy-peer.js";

/** Ten minutes of three axes at 4,096 samples per second, to order maps and attribution: our runs per run of SciPy, kernels where SciPy is not there, and memory. */
const BUDGET = { scipy: 1, kernels: 60, megabytes: 400 };
const ROUNDS = 3;
const MAP = { turns: 32, highestOrder: 6, rows: 600 };

const [, , folder = "", peer = ""] = process.argv;
process.exitCode = main(folder);

function main(directory: string): number {
  const times: number[] = [];
  const kernels: number[] = [];
  const heard: Heard[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    kernels.push(seconds(calibrationKernel));
    times.push(
      seconds(() => {
        heard[0] = listen(inputOf(directory));
      }),
    );
  }
  const [ours, kernel] = [median(times), median(kernels)];
  const megabytes = process.resourceUsage().maxRSS / 1024;
  const theirs = scipySeconds(peer, directory, inputOf(directory), MAP.turns, MAP.highestOrder, heard[0] as Heard);
  const [ratio, budget, yardstick] =
    theirs === null ? [ours / kernel, BUDGET.kernels, "kernels"] : [ours / theirs, BUDGET.scipy, "runs of SciPy"];
  console.log(
    `${MINUTES} min, ${AXES} axes at ${RATE} Hz, to order maps and attribution: ${ours.toFixed(2)} s, ${megabytes.toFixed(0)} MB at most`,
  );
  console.log(theirs === null ? "python3 with SciPy is not here, so the kernel stands in." : `SciPy: ${theirs.toFixed(2)} s`);
  console.log(`ratio ${ratio.toFixed(2)} ${yardstick}, budget ${budget}; memory budget ${BUDGET.megabytes} MB`);
  return ratio <= budget && megabytes <= BUDGET.megabytes ? 0 : 1;
}

function listen(input: AttributionInput): Heard {
  const maps = through(
    orderMapsSteps(
      input.channels.map(({ samples }) => samples),
      input.reference.angle,
      MAP,
    ),
  );
  const attribution = through(attributionSteps(input));
  if (attribution.verdict?.part !== "propeller-shaft") throw new Error("what was timed is not the work");
  return { maps, attribution };
}

function through<T>(steps: Generator<number, SignalResult<T>>): T {
  for (let step = steps.next(); ; step = steps.next()) {
    if (!step.done) continue;
    if (!step.value.ok) throw new Error(step.value.code);
    return step.value.value;
  }
}

function seconds(run: () => unknown): number {
  const started = performance.now();
  run();
  return (performance.now() - started) / 1000;
}
