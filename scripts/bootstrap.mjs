// Makes a fresh clone ready: installs what the lock file names, then builds what is stale. Needs nothing but Node and npm.
import { existsSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { isInstalled, markInstalled } from "./installed.mjs";
import { requireNode } from "./node-version.mjs";
import { inRoot, root } from "./paths.mjs";
import { runCommand, runNode } from "./run-command.mjs";

requireNode(20, 0, "Halfturn");

const NETWORK_ERRORS = /ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ENETUNREACH|ERR_SOCKET_TIMEOUT|network/i;

/** Installs the locked packages when they are missing or out of date. */
async function install() {
  if (isInstalled(root)) return;
  const why = existsSync(inRoot("node_modules")) ? "package-lock.json has changed" : "first run";
  console.error(`Installing packages (${why}) ...`);
  const npm = process.env.npm_execpath;
  const args = ["ci", "--no-audit", "--no-fund"];
  const { code, errors } = npm
    ? await runNode(npm, args, { keepErrors: true })
    : await runCommand(process.platform === "win32" ? "npm.cmd" : "npm", args, { keepErrors: true });
  if (code === 0) return markInstalled(root);
  if (NETWORK_ERRORS.test(errors)) {
    console.error(
      "npm could not reach its registry. The first run needs a network connection (or a filled npm cache); afterwards none is needed.",
    );
  } else {
    console.error("npm could not install the packages; its own message stands above.");
  }
  process.exit(1);
}

/** Compiles the packages, only what changed. */
async function compile() {
  const { code } = await runNode(inRoot("node_modules", "typescript", "bin", "tsc"), ["-b"]);
  if (code === 0) return;
  console.error("The types do not check; the compiler's messages stand above.");
  process.exit(1);
}

/** Bundles the command line, only when a source is newer. */
async function bundle() {
  const { bundleCli } = await import("./bundle.mjs");
  await bundleCli().catch((/** @type {Error} */ { message }) => {
    console.error(`The command line could not be bundled. ${message}`);
    process.exit(1);
  });
}

/** Builds the web app, only when a source is newer. */
async function web() {
  const { buildWeb } = await import("./build-web.mjs");
  if (!(await buildWeb())) process.exit(1);
}

/**
 * Everything that `npm start` and `npm test` need before they can begin. Each is built from the sources, so they are built at once.
 * @param {{ withWeb?: boolean }} [wanted]
 */
export async function bootstrap({ withWeb = false } = {}) {
  await install();
  await Promise.all([compile(), bundle(), withWeb ? web() : null]);
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) await bootstrap({ withWeb: true });
