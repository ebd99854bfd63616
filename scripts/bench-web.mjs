// Times presses in the web app on a slowed browser; with a word, only what has it in its name.
import { spawnSync } from "node:child_process";
import { buildApps } from "./build-apps.mjs";
import { bundle } from "./bundle.mjs";
import { inRoot } from "./paths.mjs";
import { runCommand } from "./run-command.mjs";

// As deep below the app as the helpers of its browser tests, which find the program and the examples from where they lie.
const outfile = inRoot("apps", "web", ".cache", "bench", "web.js");
if (process.env.HALFTURN_PROGRAM === undefined || process.env.HALFTURN_WEB === undefined) await buildApps();
await bundle(inRoot("bench", "src", "web", "run.ts"), outfile);
// In the real-time class each thread of the browser runs as soon as it has work: what else the machine does is not timed, nor how two processors are shared out. Only an administrator may ask for it.
const IN_REAL_TIME = ["--rr", "10"];
const mayAsk = spawnSync("chrt", [...IN_REAL_TIME, "true"]).status === 0;
if (!mayAsk) console.log("Run at the usual priority: what else this machine does is timed too.");
const bench = [process.execPath, outfile, ...process.argv.slice(2)];
const [program = "", ...args] = mayAsk ? ["chrt", ...IN_REAL_TIME, ...bench] : bench;
const { code } = await runCommand(program, args);
process.exitCode = code;
