// Builds the web app into apps/web/dist unless everything that goes into it is older.
import { existsSync, mkdirSync, readdirSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { inRoot } from "./paths.mjs";
import { runNode } from "./run-command.mjs";

const WEB = inRoot("apps", "web");
const STAMP = inRoot(".cache", "web-built");
const OUTPUTS = ["dist", "dist-types", "node_modules"];
const TESTS = /\.test(-support)?\.tsx?$|\.tsbuildinfo$/;

/** When the newest file below a folder, or a file itself, was changed; tests are left out, for nothing of them is built.
 * @param {string} place @returns {number}
 */
function changedAt(place) {
  const found = statSync(place, { throwIfNoEntry: false });
  if (!found) return 0;
  if (!found.isDirectory()) return TESTS.test(place) ? 0 : found.mtimeMs;
  const inside = readdirSync(place).filter((name) => !OUTPUTS.includes(name));
  return Math.max(0, ...inside.map((name) => changedAt(join(place, name))));
}

/** The app, the packages that it is built from, and the versions of everything else. */
const inputs = () => [WEB, inRoot("package-lock.json"), ...readdirSync(inRoot("packages")).map((name) => inRoot("packages", name, "src"))];

function isFresh() {
  if (!existsSync(STAMP) || !existsSync(join(WEB, "dist", "index.html"))) return false;
  const built = statSync(STAMP).mtimeMs;
  return inputs().every((place) => changedAt(place) <= built);
}

/** Builds the app where it is stale; false where that failed. */
export async function buildWeb() {
  if (isFresh()) return true;
  console.error("Building the web app ...");
  const started = new Date();
  const { code } = await runNode(inRoot("node_modules", "vite", "bin", "vite.js"), ["build", "--logLevel", "warn"], { cwd: WEB });
  if (code !== 0) {
    console.error("The web app could not be built; its builder's messages stand above.");
    return false;
  }
  mkdirSync(dirname(STAMP), { recursive: true });
  writeFileSync(STAMP, "");
  // A source that was changed while the builder ran may have been read before or after.
  utimesSync(STAMP, started, started);
  return true;
}
