/** Why the database did not do its work: nothing that a request can be blamed for. */
export type StoreFaultCode =
  /** No connection, or the server is starting or stopping; it may come back by itself. */
  | "database-unreachable"
  /** Name or password refused, or no such database. */
  | "database-refused"
  | "disk-full"
  | "read-only"
  /** Another program is writing and does not come to an end. */
  | "database-busy"
  /** Another server serves the store. */
  | "store-held"
  | "database-damaged"
  /** The file is no database of this product. */
  | "not-a-database"
  /** Written by a newer version of the program. */
  | "database-newer"
  | "folder-missing"
  /** Something else is where the folder should be. */
  | "not-a-folder"
  /** A link, a folder or a device is where a file of the database should be. */
  | "not-a-file"
  | "file-missing"
  | "file-exists"
  | "no-permission"
  | "database-failed";

/** Thrown where the database fails; answers of the store itself are values. `place` is the file, or the address without its password. */
export class StoreFault extends Error {
  constructor(
    readonly code: StoreFaultCode,
    readonly place: string,
    options: { readonly cause?: unknown } = {},
  ) {
    super(`${code}: ${place}`, options);
    this.name = "StoreFault";
  }
}
