// Times listening to ten minutes of three axes beside SciPy doing the same; without SciPy beside the bench's kernel.
import { bundle } from "./bundle.mjs";
import { inRoot } from "./paths.mjs";
import { runNode } from "./run-command.mjs";

const outfile = inRoot(".cache", "bench", "listen.js");
await bundle(inRoot("bench", "src", "listen", "run.ts"), outfile);
const { code } = await runNode(outfile, [inRoot("bench", "src", "listen", "scipy-peer.py")]);
process.exitCode = code;
