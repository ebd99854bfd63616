import { chmodSync, lstatSync, type Stats } from "node:fs";

/** Everything that anybody but the owner may do. */
const OTHERS = 0o077;

/** What is at a path itself, and not where a link leads; null where there is nothing. */
export const whatIsAt = (path: string): Stats | null => lstatSync(path, { throwIfNoEntry: false }) ?? null;

/** Whether somebody but the owner may look in. Windows keeps its rights elsewhere and shows none here that mean anything. */
export const isOpenToOthers = ({ mode }: Pick<Stats, "mode">): boolean => process.platform !== "win32" && (mode & OTHERS) !== 0;

/** Takes a file of this user from everybody else: cases name customers' vehicles. One of another user stays as it is. */
export function closeToOthers(path: string): void {
  const found = whatIsAt(path);
  if (found === null || !isOpenToOthers(found) || found.uid !== process.getuid?.()) return;
  chmodSync(path, found.mode & 0o700);
}
