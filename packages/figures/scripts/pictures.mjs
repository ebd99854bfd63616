// Writes the pictures of docs/pictures from the two-piece example case: node packages/figures/scripts/pictures.mjs
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { loadFigures } from "./load-figures.mjs";

const here = dirname(fileURLToPath(import.meta.url));
const out = join(here, "../../../docs/pictures");
const example = JSON.parse(readFileSync(join(here, "../../casefile/examples/two-piece.halfturn.json"), "utf8"));
mkdirSync(out, { recursive: true });
const { caseFigures, caseOrders } = await loadFigures();
for (const [name, svg] of Object.entries(caseFigures(example, { theme: "light", width: 720 }))) {
  writeFileSync(join(out, `${name.replace(/^rear-/, "")}.svg`), `${svg}\n`);
}
writeFileSync(join(out, "orders.svg"), `${caseOrders(example, 85, { theme: "light", width: 720 })}\n`);
