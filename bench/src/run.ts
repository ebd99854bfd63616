import budgets from "../budgets.json" with { type: "json" };
import { BENCHMARKS } from "./benchmarks/index.js";
import { judge } from "./judge.js";
import { type Measurement, measure } from "./measure.js";
import { table } from "./table.js";

const clock = () => performance.now();
const measurements: Measurement[] = [];
// One after the other: two at once would time each other.
for (const benchmark of BENCHMARKS) measurements.push(await measure(benchmark, clock));
const judged = judge(measurements, budgets);
console.log(table(judged));
if (judged.some(({ within }) => !within)) {
  console.error("A ratio is over its budget: find what became slower, or raise the budget in the same commit and say why.");
  process.exitCode = 1;
}
