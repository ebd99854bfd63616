// `npm start`: from a clean clone to the shop in a browser. `npm start -- my-case.json` analyses a case of your own and writes its report instead.
import { mkdirSync } from "node:fs";
import { basename, join, relative, resolve } from "node:path";
import { bootstrap } from "./bootstrap.mjs";
import { cliBundle, inRoot } from "./paths.mjs";
import { runNode } from "./run-command.mjs";

const SHOP = inRoot("shop-data");

const typedIn = process.env.INIT_CWD ?? process.cwd();
const [asked, ...more] = process.argv.slice(2);

const file = asked !== undefined && !asked.startsWith("-") ? asked : null;
await bootstrap({ withWeb: file === null });
if (file !== null) await analyse(resolve(typedIn, file));
else await serve(asked === undefined ? [] : [asked, ...more]);

/** @param {readonly string[]} flags */
async function serve(flags) {
  const own = flags.some((flag) => /^--(data|database)(=|$)/.test(flag)) ? [] : ["--data", SHOP];
  const { code } = await runNode(cliBundle, ["serve", ...own, ...flags], { cwd: typedIn, stops: true });
  process.exit(code);
}

/** @param {string} caseFile */
async function analyse(caseFile) {
  const outFolder = inRoot(".cache", "reports");
  const report = join(outFolder, `${basename(caseFile).replace(/(\.halfturn)?\.json$/, "")}.pdf`);
  mkdirSync(outFolder, { recursive: true });
  for (const args of [
    ["analyse", caseFile],
    ["report", caseFile, "-o", report],
  ]) {
    console.log(`\n> halfturn ${args.map((arg) => (arg.includes("/") ? relative(typedIn, arg) : arg)).join(" ")}\n`);
    const { code } = await runNode(cliBundle, args);
    if (code !== 0) process.exit(code);
  }
}
