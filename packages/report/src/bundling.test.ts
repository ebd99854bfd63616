import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { afterAll, expect, test } from "vitest";
import { pdfFacts } from "./pdf/pdf-facts.test-support.js";

// Inside the workspace, so that the module kept out of the bundle is found from the bundle's own place.
const cache = fileURLToPath(new URL("../../../node_modules/.cache/", import.meta.url));
mkdirSync(cache, { recursive: true });
const folder = mkdtempSync(join(cache, "report-bundle-"));
afterAll(() => rmSync(folder, { recursive: true }));

const ENTRY = `
import { writeFileSync } from "node:fs";
import { renderPdf, renderHtml, reportContent } from "./index.js";
import { exampleCase, sampleReport } from "./sample-report.test-support.js";
const content = reportContent(sampleReport(exampleCase("one-piece")));
writeFileSync("out.pdf", renderPdf(content, { paper: "a4" }));
writeFileSync("out.html", renderHtml(content));
`;

test("a bundle with the typesetter left outside carries the template along", async () => {
  const examples = new URL("../../casefile/", import.meta.url).href;
  await build({
    stdin: { contents: ENTRY, resolveDir: fileURLToPath(new URL(".", import.meta.url)), loader: "ts" },
    outfile: join(folder, "bundle.mjs"),
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    conditions: ["halfturn-source"],
    external: ["@myriaddreamin/*"],
    // The example case is a file of the package beside this one; the product's own bundler carries such files along.
    define: { "import.meta.url": JSON.stringify(new URL("src/examples.js", examples).href) },
    banner: { js: 'import { createRequire } from "node:module"; const require = createRequire(import.meta.url);' },
    logLevel: "warning",
  });
  execFileSync(process.execPath, ["bundle.mjs"], { cwd: folder });
  const facts = pdfFacts(readFileSync(join(folder, "out.pdf")));
  expect(facts.header).toBe("%PDF-1.7");
  expect(facts.mediaBoxes.length).toBeGreaterThan(2);
  expect(readFileSync(join(folder, "out.html"), "utf8")).toContain("</html>");
}, 60_000);
