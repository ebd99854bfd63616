import { StoreFault, type StoreFaultCode } from "./store-fault.js";

/** By the beginning of SQLite's result code names, most special first (sqlite.org/rescode.html). */
const CODES: readonly (readonly [start: string, code: StoreFaultCode])[] = [
  ["SQLITE_FULL", "disk-full"],
  ["SQLITE_IOERR", "database-failed"],
  ["SQLITE_READONLY", "read-only"],
  ["SQLITE_CANTOPEN", "no-permission"],
  ["SQLITE_BUSY", "database-busy"],
  ["SQLITE_LOCKED", "database-busy"],
  ["SQLITE_CORRUPT", "database-damaged"],
  ["SQLITE_NOTADB", "not-a-database"],
  ["ENOSPC", "disk-full"],
  ["EROFS", "read-only"],
  ["EACCES", "no-permission"],
  ["EPERM", "no-permission"],
  ["EEXIST", "file-exists"],
  ["ENOENT", "folder-missing"],
  ["ENOTDIR", "folder-missing"],
];

/** What SQLite or the file system said, as a fault of the store. */
export function sqliteFault(error: unknown, place: string): StoreFault {
  if (error instanceof StoreFault) return error;
  const said = String((error as { readonly code?: unknown } | null)?.code ?? "");
  const code = CODES.find(([start]) => said.startsWith(start))?.[1] ?? "database-failed";
  return new StoreFault(code, place, { cause: error });
}
