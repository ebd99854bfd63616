import { type AttributionInput, attributionSteps } from "@halfturn/engine/attribution";
import { orderMapsSteps, type SignalResult } from "@halfturn/engine/signal";
import { calibrationKernel } from "../kernel.js";
import { median } from "../measure.js";
import { AXES, inputOf, MINUTES, RATE } from "./long-drive.js";
import { type Heard, scipySeconds } from "./scipy-peer.js";

/** Ten minutes of three axes at 4,096 samples per second, to order maps and attribution: our runs per run of SciPy, kernels where SciPy is not there, and memory. */
const BUDGET = { scipy: 1, kernels: 45, megabytes: 400 };
const ROUNDS = 7;
const MAP = { turns: 32, highestOrder: 6, rows: 600 };

const [, , folder = "", peer = ""] = process.argv;
process.exitCode = main(folder);

function main(directory: string): number {
  const rounds = Array.from({ length: ROUNDS }, () => round(directory));
  const ours = median(rounds.map((one) => one.ours));
  const megabytes = process.resourceUsage().maxRSS / 1024;
  const withPeer = rounds.flatMap(({ ours: mine, theirs }) => (theirs === null ? [] : [{ ratio: mine / theirs, theirs }]));
  const here = withPeer.length > 0;
  const ratio = median(here ? withPeer.map((one) => one.ratio) : rounds.map((one) => one.ours / one.kernel));
  const [budget, yardstick] = here ? [BUDGET.scipy, "runs of SciPy"] : [BUDGET.kernels, "kernels"];
  console.log(
    `${MINUTES} min, ${AXES} axes at ${RATE} Hz, to order maps and attribution: ${ours.toFixed(2)} s, ${megabytes.toFixed(0)} MB at most`,
  );
  console.log(
    here
      ? `SciPy: ${median(withPeer.map(({ theirs }) => theirs)).toFixed(2)} s; ratios ${withPeer.map((one) => one.ratio.toFixed(2)).join(", ")}`
      : "python3 with SciPy is not here, so the kernel stands in.",
  );
  console.log(`ratio ${ratio.toFixed(2)} ${yardstick}, budget ${budget}; memory budget ${BUDGET.megabytes} MB`);
  return ratio <= budget && megabytes <= BUDGET.megabytes ? 0 : 1;
}

/** Kernel, ours and SciPy right after one another, since a machine may be twice as fast a minute later; both warmed up once. */
function round(directory: string): { readonly kernel: number; readonly ours: number; readonly theirs: number | null } {
  const kernel = seconds(calibrationKernel);
  listen(inputOf(directory));
  const heard: Heard[] = [];
  const ours = seconds(() => {
    heard[0] = listen(inputOf(directory));
  });
  return { kernel, ours, theirs: scipySeconds(peer, directory, inputOf(directory), MAP.turns, MAP.highestOrder, heard[0] as Heard) };
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
