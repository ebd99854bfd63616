import { spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { inRoot } from "./paths.mjs";

/** A small tree in which every arrow that is drawn the wrong way must be found, and no other. */
const TREE: Readonly<Record<string, string>> = {
  "packages/engine/src/units/index.ts": "export const a = 1;",
  "packages/engine/src/units/inner.ts": "export const b = 1;",
  "packages/engine/src/units/reads-files.ts": 'import "node:fs";',
  "packages/engine/src/units/knows-casefile.ts": 'import "../../../casefile/src/index.js";',
  "packages/engine/src/units/knows-units.ts": 'import "./index.js";',
  "packages/engine/src/units/first.ts": 'import "./second.js";',
  "packages/engine/src/units/second.ts": 'import type { x } from "./first.js"; export type Y = typeof x;',
  "packages/engine/src/units/takes-zod.ts": 'import "zod";',
  "packages/engine/src/units/takes-matrix.ts": 'import "ml-matrix";',
  "packages/engine/src/units/uses-test.ts": 'import "./units.test.js";',
  "packages/engine/src/units/units.test.ts": "export {};",
  "packages/casefile/src/index.ts": 'import "../../engine/src/units/index.js";',
  "packages/casefile/src/knows-inner.ts": 'import "../../engine/src/units/inner.js";',
  "packages/casefile/src/knows-words.ts": 'import "../../words/src/index.js";',
  "packages/words/src/index.ts": 'import "../../casefile/src/index.js";',
  "packages/words/src/knows-figures.ts": 'import "../../figures/src/index.js";',
  "packages/figures/src/index.ts": 'import "../../words/src/index.js";',
  "packages/figures/src/knows-report.ts": 'import "../../report/src/index.js";',
  "packages/report/src/index.ts": 'import "../../figures/src/index.js";',
  "packages/report/src/knows-app.ts": 'import "../../../apps/cli/src/index.js";',
  "packages/report/src/knows-part.ts": 'import "../../figures/src/view/part.js";',
  "packages/figures/src/view/part.ts": "export {};",
  "apps/cli/src/index.ts": 'import "../../../packages/report/src/index.js";',
  "apps/web/src/knows-cli.ts": 'import "../../cli/src/index.js";',
  "packages/words/src/lost.ts": 'import "./nowhere.js";',
  "node_modules/zod/package.json": '{ "name": "zod", "version": "4.0.0", "main": "index.js" }',
  "node_modules/zod/index.js": "",
  "node_modules/ml-matrix/package.json": '{ "name": "ml-matrix", "version": "6.0.0", "main": "index.js" }',
  "node_modules/ml-matrix/index.js": "",
  "package.json": '{ "name": "tree", "dependencies": { "zod": "4.0.0", "ml-matrix": "6.0.0" } }',
};

const EXPECTED = [
  "apps/web/src/knows-cli.ts apps-are-islands",
  "packages/casefile/src/knows-inner.ts subjects-through-their-index",
  "packages/casefile/src/knows-words.ts casefile-knows-only-what-lies-below",
  "packages/engine/src/units/first.ts no-cycles",
  "packages/engine/src/units/knows-casefile.ts engine-knows-only-what-lies-below",
  "packages/engine/src/units/reads-files.ts engine-has-no-node-or-dom",
  "packages/engine/src/units/takes-zod.ts engine-libraries",
  "packages/engine/src/units/uses-test.ts no-tests-in-the-product",
  "packages/figures/src/knows-report.ts figures-knows-only-what-lies-below",
  "packages/report/src/knows-app.ts report-knows-only-what-lies-below",
  "packages/report/src/knows-part.ts packages-through-their-exports",
  "packages/words/src/knows-figures.ts words-knows-only-what-lies-below",
  "packages/words/src/lost.ts imports-resolve",
];

interface Violation {
  readonly from: string;
  readonly rule: { readonly name: string };
}

let tree: string;
beforeAll(() => {
  tree = mkdtempSync(join(tmpdir(), "halfturn-layers-"));
  for (const [file, text] of Object.entries(TREE)) {
    mkdirSync(dirname(join(tree, file)), { recursive: true });
    writeFileSync(join(tree, file), text);
  }
  for (const file of [".dependency-cruiser.mjs", "tsconfig.base.json"]) copyFileSync(inRoot(file), join(tree, file));
});
afterAll(() => rmSync(tree, { recursive: true, force: true }));

it("finds every arrow drawn the wrong way, and no other", () => {
  const cruise = inRoot("node_modules/dependency-cruiser/bin/dependency-cruise.mjs");
  const { stdout } = spawnSync(process.execPath, [cruise, "packages", "apps", "--output-type", "json"], { cwd: tree, encoding: "utf8" });
  const violations: readonly Violation[] = JSON.parse(stdout).summary.violations;
  expect(violations.map(({ from, rule }) => `${from} ${rule.name}`).sort()).toEqual(EXPECTED);
}, 30_000);
