import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { CASE_VERSION, examples, restore, serialise } from "../dist/index.js";

// Writes one kept file for each example in the newest version. Run once for each new version: what is kept is never written again.
const folder = new URL(`../../../fixtures/formats/v${CASE_VERSION}/`, import.meta.url);
if (existsSync(new URL("manifest.json", folder))) throw new Error("the files of this version are kept already");
mkdirSync(folder, { recursive: true });

const files = {};
for (const { name, url } of examples) {
  const restored = restore(readFileSync(new URL(url), "utf8"));
  if (!restored.ok) throw new Error(`${name}: ${JSON.stringify(restored.problems)}`);
  const text = serialise(restored.case);
  writeFileSync(new URL(`${name}.halfturn.json`, folder), text);
  files[`${name}.halfturn.json`] = createHash("sha256").update(text).digest("hex");
}
writeFileSync(new URL("manifest.json", folder), `${JSON.stringify({ version: CASE_VERSION, sha256: files }, null, 2)}\n`);
