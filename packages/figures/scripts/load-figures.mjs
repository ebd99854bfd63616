import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";

/** Bundles the figures and their sample drivelines from sources, so that pictures need no build. */
export async function loadFigures() {
  const folder = mkdtempSync(join(tmpdir(), "halfturn-figures-"));
  const outfile = join(folder, "figures.mjs");
  const entry = join(dirname(fileURLToPath(import.meta.url)), "../src/sample-figures.test-support.ts");
  await build({
    entryPoints: [entry],
    outfile,
    bundle: true,
    format: "esm",
    platform: "node",
    conditions: ["halfturn-source"],
    logLevel: "warning",
  });
  const figures = await import(pathToFileURL(outfile).href);
  rmSync(folder, { recursive: true });
  return figures;
}
