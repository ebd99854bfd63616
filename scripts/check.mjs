// Everything a change must pass before it is proposed. `--static` leaves out the unit tests.
import { inRoot } from "./paths.mjs";
import { runNode } from "./run-command.mjs";

/** @param {string[]} parts */
const tool = (...parts) => inRoot("node_modules", ...parts);

/** @type {readonly { name: string, file: string, args: readonly string[], static: boolean }[]} */
const STEPS = [
  { name: "types", file: tool("typescript", "bin", "tsc"), args: ["-b"], static: true },
  { name: "format and lint", file: tool("@biomejs", "biome", "bin", "biome"), args: ["check", "--error-on-warnings"], static: true },
  {
    name: "layers",
    file: tool("dependency-cruiser", "bin", "dependency-cruise.mjs"),
    args: ["packages", "apps", "verification", "bench"],
    static: true,
  },
  { name: "unused code", file: tool("knip", "bin", "knip.js"), args: ["--no-progress", "--no-config-hints"], static: true },
  { name: "house rules", file: inRoot("scripts", "house-rules.mjs"), args: [], static: true },
  { name: "unit tests", file: tool("vitest", "vitest.mjs"), args: ["run", "--project", "unit", "--reporter=dot"], static: false },
];

const onlyStatic = process.argv.includes("--static");
/** @type {{ name: string, code: number, seconds: number }[]} */
const outcomes = [];
for (const step of STEPS.filter((candidate) => candidate.static || !onlyStatic)) {
  console.log(`\n== ${step.name}`);
  const started = performance.now();
  const { code } = await runNode(step.file, step.args);
  outcomes.push({ name: step.name, code, seconds: (performance.now() - started) / 1000 });
}

console.log("");
for (const { name, code, seconds } of outcomes)
  console.log(`${code === 0 ? "ok    " : "FAILED"}  ${name.padEnd(16)} ${seconds.toFixed(1)} s`);
process.exit(outcomes.every(({ code }) => code === 0) ? 0 : 1);
