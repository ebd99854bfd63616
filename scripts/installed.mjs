import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** @typedef {{ version?: string, integrity?: string, link?: boolean, optional?: boolean, devOptional?: boolean }} LockEntry */
/** @typedef {Record<string, LockEntry>} LockEntries */

const STAMP = "node_modules/.halfturn-lock";

/** @param {string} file */
const hashOf = (file) => createHash("sha256").update(readFileSync(file)).digest("hex");

/** @param {string} file @returns {LockEntries} */
const entriesOf = (file) => JSON.parse(readFileSync(file, "utf8")).packages ?? {};

/**
 * Whether what npm says it installed is what the lock file asks for. Optional packages of other platforms may be absent.
 * @param {LockEntries} wanted
 * @param {LockEntries} found
 */
export function installMatches(wanted, found) {
  return Object.entries(wanted).every(([place, entry]) => {
    if (!place.includes("node_modules/")) return true;
    const have = found[place];
    if (have === undefined) return entry.optional === true || entry.devOptional === true;
    return have.version === entry.version && have.integrity === entry.integrity;
  });
}

/**
 * Whether node_modules under `root` belongs to the package-lock.json beside it.
 * A stamp answers at once; without a fresh stamp npm's own record is compared, so that a plain `npm install` is not undone.
 * @param {string} root
 */
export function isInstalled(root) {
  const lock = join(root, "package-lock.json");
  const stamp = join(root, STAMP);
  const record = join(root, "node_modules/.package-lock.json");
  if (!existsSync(record)) return false;
  if (existsSync(stamp) && readFileSync(stamp, "utf8").trim() === hashOf(lock)) return true;
  if (!installMatches(entriesOf(lock), entriesOf(record))) return false;
  markInstalled(root);
  return true;
}

/** @param {string} root */
export function markInstalled(root) {
  writeFileSync(join(root, STAMP), `${hashOf(join(root, "package-lock.json"))}\n`);
}
