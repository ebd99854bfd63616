// Renders sample figures and those of the example cases for looking at: node packages/figures/scripts/sheet.mjs OUT_DIR. Nothing it writes belongs in the repository.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { loadFigures } from "./load-figures.mjs";

const out = process.argv[2];
if (!out) throw new Error("usage: node packages/figures/scripts/sheet.mjs OUT_DIR");
mkdirSync(out, { recursive: true });
const examples = join(dirname(fileURLToPath(import.meta.url)), "../../casefile/examples");
const { sampleFigures, caseFigures, caseOrders } = await loadFigures();
for (const [theme, width, language] of [
  ["light", 720, "en"],
  ["dark", 720, "en"],
  ["print", 720, "es"],
  ["light", 360, "es"],
  ["dark", 360, "en"],
]) {
  const look = { theme, width, language };
  const write = (name, svg) => writeFileSync(join(out, `${name}-${theme}-${width}.svg`), svg);
  for (const [name, svg] of Object.entries(sampleFigures(look))) write(name, svg);
  for (const file of readdirSync(examples)) {
    const document = JSON.parse(readFileSync(join(examples, file), "utf8"));
    for (const [name, svg] of Object.entries(caseFigures(document, look))) write(`case-${file.split(".")[0]}-${name}`, svg);
    write(`case-${file.split(".")[0]}-orders`, caseOrders(document, 105, look));
  }
}
