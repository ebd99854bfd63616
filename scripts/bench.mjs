// Bundles the bench with the packages' sources and runs it on plain Node, as the product runs.
import { bundle, bundleCli } from "./bundle.mjs";
import { inRoot } from "./paths.mjs";
import { runNode } from "./run-command.mjs";

const outfile = inRoot(".cache", "bench", "run.js");
await bundleCli();
await bundle(inRoot("bench", "src", "run.ts"), outfile);
const { code } = await runNode(outfile, []);
process.exitCode = code;
