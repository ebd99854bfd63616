// The whole test run on a clean clone: install, build, every project of vitest, and a closing line that says what was proved.
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { bootstrap } from "./bootstrap.mjs";
import { requireNode } from "./node-version.mjs";
import { inRoot } from "./paths.mjs";
import { runNode } from "./run-command.mjs";
import { tally } from "./test-tally.mjs";

requireNode(20, 19, "The test runner");
await bootstrap();

const reportFile = inRoot(".cache", "test-report.json");
mkdirSync(inRoot(".cache"), { recursive: true });
rmSync(reportFile, { force: true });

const vitest = inRoot("node_modules", "vitest", "vitest.mjs");
const { code } = await runNode(vitest, [
  "run",
  "--reporter=default",
  "--reporter=json",
  `--outputFile.json=${reportFile}`,
  ...process.argv.slice(2),
]);

if (!existsSync(reportFile)) {
  console.error("The test runner ended without a report: nothing was proved.");
  process.exit(1);
}
const { closingLine, good, notRun, passed } = tally(JSON.parse(readFileSync(reportFile, "utf8")));
if (notRun > 0) console.error(`${notRun} tests did not run; a test that does not run is a failure here.`);
if (passed === 0) console.error("No test passed: nothing was proved.");
console.log(`\n${closingLine}`);
process.exit(code === 0 && good ? 0 : 1);
