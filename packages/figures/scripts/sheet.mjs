// Renders sample figures for looking at: node packages/figures/scripts/sheet.mjs OUT_DIR. Nothing it writes belongs in the repository.
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { loadFigures } from "./load-figures.mjs";

const out = process.argv[2];
if (!out) throw new Error("usage: node packages/figures/scripts/sheet.mjs OUT_DIR");
mkdirSync(out, { recursive: true });
const { sampleFigures } = await loadFigures();
for (const [theme, width] of [
  ["light", 720],
  ["dark", 720],
  ["print", 720],
  ["light", 360],
  ["dark", 360],
]) {
  for (const [name, svg] of Object.entries(sampleFigures({ theme, width }))) writeFileSync(join(out, `${name}-${theme}-${width}.svg`), svg);
}
