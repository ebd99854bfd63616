// Times listening to ten minutes of three axes beside SciPy doing the same; without SciPy beside the bench's kernel.
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { bundle } from "./bundle.mjs";
import { inRoot } from "./paths.mjs";
import { runNode } from "./run-command.mjs";

const source = inRoot("bench", "src", "listen");
const built = inRoot(".cache", "bench");
for (const name of ["make", "run"]) await bundle(join(source, `${name}.ts`), join(built, `listen-${name}.js`));
const folder = mkdtempSync(join(tmpdir(), "halfturn-listen-"));
try {
  const made = await runNode(join(built, "listen-make.js"), [folder]);
  process.exitCode = made.code || (await runNode(join(built, "listen-run.js"), [folder, join(source, "scipy-peer.py")])).code;
} finally {
  rmSync(folder, { recursive: true });
}
