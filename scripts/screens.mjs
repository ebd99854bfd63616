// Takes the pictures of the app in docs/screens; with a word, only those that have it in their name.
import { buildApps } from "./build-apps.mjs";
import { bundle } from "./bundle.mjs";
import { inRoot } from "./paths.mjs";
import { runNode } from "./run-command.mjs";

// As deep below the app as the helpers of its browser tests, which find the program and the examples from where they lie.
const outfile = inRoot("apps", "web", ".cache", "screens", "run.js");
if (process.env.HALFTURN_PROGRAM === undefined || process.env.HALFTURN_WEB === undefined) await buildApps();
await bundle(inRoot("apps", "web", "browser", "screens", "run.ts"), outfile);
const { code } = await runNode(outfile, [inRoot("docs", "screens"), ...process.argv.slice(2)]);
process.exitCode = code;
