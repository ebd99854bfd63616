// `npm run halfturn -- analyse case.json`: the command line, built first if a source is newer.
import { bundleCli } from "./bundle.mjs";
import { cliBundle } from "./paths.mjs";
import { runNode } from "./run-command.mjs";

await bundleCli();
// npm changes to the root; the files named on the command line are meant from where it was typed.
const { code } = await runNode(cliBundle, process.argv.slice(2), { cwd: process.env.INIT_CWD ?? process.cwd(), stdin: true });
process.exitCode = code;
