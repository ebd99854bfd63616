// Builds what a browser test starts: the command line with the server in it, and the web app; each only when a source is newer.
import { pathToFileURL } from "node:url";
import { buildWeb } from "./build-web.mjs";
import { bundleCli } from "./bundle.mjs";

/** Everything that runs, without checking types. */
export async function buildApps() {
  await bundleCli();
  if (!(await buildWeb())) throw new Error("The web app could not be built.");
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) await buildApps();
