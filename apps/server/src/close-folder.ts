import { chmodSync, readdirSync, statSync } from "node:fs";
import { DATABASE_FILE } from "./shop-location.js";

/** Everything that anybody but the owner may do. */
const OTHERS = 0o077;

/**
 * Closes a shop's folder to other users of this machine where it is this user's and holds nothing but the shop, as one that was made by hand may. Gives whether it
 * stays open to them. Windows keeps its rights elsewhere, and shows none here that mean anything.
 */
export function closeFolder(folder: string): "closed" | "open" {
  const { mode, uid } = statSync(folder);
  if (process.platform === "win32" || (mode & OTHERS) === 0) return "closed";
  if (uid !== process.getuid?.() || !readdirSync(folder).every(isOfShop)) return "open";
  chmodSync(folder, mode & 0o700);
  return "closed";
}

const isOfShop = (name: string): boolean => name === "lan" || name.startsWith(DATABASE_FILE);
