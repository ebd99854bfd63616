// Times presses in the web app on a slowed browser; with a word, only what has it in its name.
import { constants, setPriority } from "node:os";
import { buildApps } from "./build-apps.mjs";
import { bundle } from "./bundle.mjs";
import { inRoot } from "./paths.mjs";
import { runNode } from "./run-command.mjs";

// As deep below the app as the helpers of its browser tests, which find the program and the examples from where they lie.
const outfile = inRoot("apps", "web", ".cache", "bench", "web.js");
if (process.env.HALFTURN_PROGRAM === undefined || process.env.HALFTURN_WEB === undefined) await buildApps();
await bundle(inRoot("bench", "src", "web", "run.ts"), outfile);
// The browser takes on the priority: what else the machine does is not timed. Only an administrator may raise it.
try {
  setPriority(constants.priority.PRIORITY_HIGHEST);
} catch {
  console.log("Run at the usual priority: what else this machine does is timed too.");
}
const { code } = await runNode(outfile, process.argv.slice(2));
process.exitCode = code;
