// `npm start`: from a clean clone to an analysed case and its report. `npm start -- my-case.json` takes a case of your own.
import { mkdirSync } from "node:fs";
import { basename, join, relative, resolve } from "node:path";
import { bootstrap } from "./bootstrap.mjs";
import { cliBundle, inRoot } from "./paths.mjs";
import { runNode } from "./run-command.mjs";

const DEMO_CASE = inRoot("packages", "casefile", "examples", "two-piece.halfturn.json");

const typedIn = process.env.INIT_CWD ?? process.cwd();
const asked = process.argv[2];
const caseFile = asked === undefined ? DEMO_CASE : resolve(typedIn, asked);
const outFolder = inRoot(".cache", "reports");
const report = join(outFolder, `${basename(caseFile).replace(/(\.halfturn)?\.json$/, "")}.pdf`);

await bootstrap();
mkdirSync(outFolder, { recursive: true });

/** @param {readonly string[]} args */
async function halfturn(...args) {
  console.log(`\n> halfturn ${args.map((arg) => (arg.includes("/") ? relative(typedIn, arg) : arg)).join(" ")}\n`);
  const { code } = await runNode(cliBundle, args);
  if (code !== 0) process.exit(code);
}

await halfturn("analyse", caseFile);
await halfturn("report", caseFile, "-o", report);
