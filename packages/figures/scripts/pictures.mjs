// Writes the pictures of docs/pictures from one example driveline: node packages/figures/scripts/pictures.mjs
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { loadFigures } from "./load-figures.mjs";

const out = join(dirname(fileURLToPath(import.meta.url)), "../../../docs/pictures");
mkdirSync(out, { recursive: true });
const { sampleFigures } = await loadFigures();
const example = "two-piece-";
for (const [name, svg] of Object.entries(sampleFigures({ theme: "light", width: 720 }))) {
  if (name.startsWith(example)) writeFileSync(join(out, `${name.slice(example.length)}.svg`), `${svg}\n`);
}
