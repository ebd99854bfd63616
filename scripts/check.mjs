// Everything a change must pass before it is proposed. `--static` leaves out the unit tests.
import { inRoot } from "./paths.mjs";
import { runNode } from "./run-command.mjs";

/** @param {string[]} parts */
const tool = (...parts) => inRoot("node_modules", ...parts);

/** @typedef {{ name: string, file: string, args: readonly string[] }} Step */

/** @type {Step} */
const TYPES = { name: "types", file: tool("typescript", "bin", "tsc"), args: ["-b"] };

/** @type {readonly Step[]} */
const OTHER_STATIC = [
  { name: "format and lint", file: tool("@biomejs", "biome", "bin", "biome"), args: ["check", "--error-on-warnings"] },
  {
    name: "layers",
    file: tool("dependency-cruiser", "bin", "dependency-cruise.mjs"),
    args: ["packages", "apps", "verification", "bench"],
  },
  { name: "unused code", file: tool("knip", "bin", "knip.js"), args: ["--no-progress", "--no-config-hints"] },
  { name: "house rules", file: inRoot("scripts", "house-rules.mjs"), args: [] },
];

/** @type {Step} */
const UNIT_TESTS = { name: "unit tests", file: tool("vitest", "vitest.mjs"), args: ["run", "--project", "unit", "--reporter=dot"] };

/** @type {{ name: string, code: number, seconds: number }[]} */
const outcomes = [];

/** Runs steps one after another; held: what each says is shown once it has ended, for another runs beside it.
 * @param {readonly Step[]} steps @param {{ held: boolean }} how */
async function inTurn(steps, { held }) {
  for (const { name, file, args } of steps) {
    const heading = `\n== ${name}`;
    if (!held) console.log(heading);
    const started = performance.now();
    const { code, said } = await runNode(file, args, { held });
    if (held) console.log(`${heading}\n${said.trimEnd()}`);
    outcomes.push({ name, code, seconds: (performance.now() - started) / 1000 });
  }
}

await Promise.all([inTurn([TYPES], { held: true }), inTurn(OTHER_STATIC, { held: true })]);
if (!process.argv.includes("--static")) await inTurn([UNIT_TESTS], { held: false });

console.log("");
for (const { name, code, seconds } of outcomes)
  console.log(`${code === 0 ? "ok    " : "FAILED"}  ${name.padEnd(16)} ${seconds.toFixed(1)} s`);
process.exit(outcomes.every(({ code }) => code === 0) ? 0 : 1);
