import { cpSync, existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { basename, dirname, join, relative } from "node:path";
import { build } from "esbuild";
import { bundleAssets } from "./bundle-assets.mjs";
import { cliBundle, cliEntry, inRoot, root } from "./paths.mjs";

// Packages with native binaries cannot live inside a bundle; they stay beside it in node_modules.
const EXTERNAL = ["@myriaddreamin/*", "better-sqlite3", "pg", "playwright-core"];

// Libraries in CommonJS expect a `require` for Node's own modules.
const REQUIRE_BANNER = `import { createRequire as createBundleRequire } from "node:module"; const require = createBundleRequire(import.meta.url);`;

const INPUTS_LIST = inRoot("apps", "cli", "dist", "halfturn.inputs.json");
/** What the bundle consists of, beside what the compiler writes into the same folder. */
const BUNDLED = /^(halfturn|report-worker|piece-[^.]+)\.js$|^assets$/;

/** Whether the bundle is at least as new as every file that went into it, this script and the lock file. */
function isFresh() {
  if (!existsSync(cliBundle) || !existsSync(INPUTS_LIST)) return false;
  const built = statSync(cliBundle).mtimeMs;
  /** @type {string[]} */
  const inputs = JSON.parse(readFileSync(INPUTS_LIST, "utf8"));
  return [...inputs, "scripts/bundle.mjs", "scripts/bundle-assets.mjs", "package-lock.json"].every(
    (file) => existsSync(inRoot(file)) && statSync(inRoot(file)).mtimeMs <= built,
  );
}

// The command line's server makes reports in a process of its own, started from a file that lies beside the program.
const BESIDE = { [cliEntry]: { "report-worker": inRoot("apps", "server", "src", "reports", "report-worker.ts") } };

// Modules loaded on demand stay in pieces of their own, so that a command pays for nothing that only another command needs.
const PIECE = "piece-";

/**
 * Bundles a TypeScript entry and the packages' sources for Node 20: one module to start, and pieces beside it for what is loaded on demand.
 * @param {string} entry
 * @param {string} outfile
 * @returns {Promise<string[]>} the files that went into it, relative to the root
 */
export async function bundle(entry, outfile) {
  /** @type {Set<string>} */
  const assets = new Set();
  const folder = dirname(outfile);
  const old = existsSync(folder) ? readdirSync(folder).filter((file) => file.startsWith(PIECE)) : [];
  const { metafile } = await build({
    entryPoints: { [basename(outfile, ".js")]: entry, ...BESIDE[entry] },
    outdir: folder,
    splitting: true,
    chunkNames: `${PIECE}[hash]`,
    absWorkingDir: root,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    conditions: ["halfturn-source"],
    mainFields: ["module", "main"],
    external: EXTERNAL,
    banner: { js: REQUIRE_BANNER },
    plugins: [bundleAssets(outfile, assets)],
    sourcemap: "linked",
    metafile: true,
    logLevel: "warning",
  });
  const fresh = new Set(Object.keys(metafile.outputs).map((file) => basename(file)));
  for (const file of old) if (!fresh.has(file)) rmSync(join(folder, file));
  const sources = Object.keys(metafile.inputs).filter((file) => existsSync(inRoot(file)));
  return [...sources, ...[...assets].map((file) => relative(root, file))];
}

/** Builds the command line into apps/cli/dist/halfturn.js unless it is up to date. */
export async function bundleCli() {
  if (isFresh()) return;
  const inputs = await bundle(cliEntry, cliBundle);
  writeFileSync(INPUTS_LIST, JSON.stringify(inputs));
}

/**
 * Puts the command line into a folder of its own: a copy of the built one where that is up to date, bundled anew otherwise.
 * @param {string} folder
 */
export async function programInto(folder) {
  if (!isFresh()) {
    await bundle(cliEntry, join(folder, basename(cliBundle)));
    return;
  }
  const built = dirname(cliBundle);
  for (const name of readdirSync(built).filter((file) => BUNDLED.test(file)))
    cpSync(join(built, name), join(folder, name), { recursive: true });
}
