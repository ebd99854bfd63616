import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type AttributionInput, attributionSteps } from "@halfturn/engine/attribution";
import { orderMapsSteps } from "@halfturn/engine/signal";
import { calibrationKernel } from "../kernel.js";
import { median } from "../measure.js";
import { AXES, inputOf, RATE, writeLongDrive } from "./long-drive.js";

/** Ten minutes of three axes at 4,096 samples per second, to order maps and attribution: our runs per run of SciPy, kernels where SciPy is not there, and memory. */
const BUDGET = { scipy: 0.6, kernels: 300, megabytes: 400 };
const MINUTES = 10;
const ROUNDS = 3;
const MAP = { turns: 32, highestOrder: 6, rows: 600 };

const [, , peer = ""] = process.argv;
const folder = mkdtempSync(join(tmpdir(), "halfturn-listen-"));
try {
  process.exitCode = main(folder);
} finally {
  rmSync(folder, { recursive: true });
}

function main(directory: string): number {
  const drive = writeLongDrive(directory, MINUTES);
  writeFileSync(join(directory, "pulses.f64"), drive.pulses);
  const input = inputOf(drive);
  const times: number[] = [];
  const kernels: number[] = [];
  let blockTurns = 0;
  for (let round = 0; round < ROUNDS; round++) {
    kernels.push(seconds(calibrationKernel));
    times.push(seconds(() => (blockTurns = listen(input))));
  }
  const [ours, kernel] = [median(times), median(kernels)];
  const megabytes = process.resourceUsage().maxRSS / 1024;
  const theirs = scipySeconds(directory, input, blockTurns);
  const [ratio, budget, yardstick] =
    theirs === null ? [ours / kernel, BUDGET.kernels, "kernels"] : [ours / theirs, BUDGET.scipy, "runs of SciPy"];
  console.log(
    `${MINUTES} min, ${AXES} axes at ${RATE} Hz, to order maps and attribution: ${ours.toFixed(2)} s, ${megabytes.toFixed(0)} MB at most`,
  );
  console.log(theirs === null ? "python3 with SciPy is not here, so the kernel stands in." : `SciPy: ${theirs.toFixed(2)} s`);
  console.log(`ratio ${ratio.toFixed(2)} ${yardstick}, budget ${budget}; memory budget ${BUDGET.megabytes} MB`);
  return ratio <= budget && megabytes <= BUDGET.megabytes ? 0 : 1;
}

/** Turns of the reference shaft in a block of the fit. */
function listen(input: AttributionInput): number {
  const maps = orderMapsSteps(
    input.channels.map(({ samples }) => samples),
    input.reference.angle,
    MAP,
  );
  for (let step = maps.next(); !step.done; step = maps.next());
  const steps = attributionSteps(input);
  for (let step = steps.next(); ; step = steps.next()) {
    if (!step.done) continue;
    if (!step.value.ok) throw new Error(step.value.code);
    if (step.value.value.verdict?.part !== "propeller-shaft") throw new Error("what was timed is not the work");
    return input.reference.angle.total / (2 * Math.PI) / step.value.value.blocks.length;
  }
}

function seconds(run: () => number): number {
  const started = performance.now();
  if (!Number.isFinite(run())) throw new Error("what was timed is not the work");
  return (performance.now() - started) / 1000;
}

function scipySeconds(directory: string, { parts, reference }: AttributionInput, blockTurns: number): number | null {
  const orders = parts.flatMap((part) => part.orders.map(({ order }) => (order * part.perWheelTurn) / reference.perWheelTurn));
  const settings = [directory, RATE, AXES, MAP.turns, MAP.highestOrder, orders.join(","), blockTurns].map(String);
  const { status, stdout } = spawnSync("python3", [peer, ...settings], { encoding: "utf8" });
  return status === 0 ? Number(stdout) : null;
}
