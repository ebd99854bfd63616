import { mkdir, open } from "node:fs/promises";
import { dirname } from "node:path";
import { sqliteFault } from "../faults/sqlite-fault.js";
import { StoreFault } from "../faults/store-fault.js";
import { closeToOthers, whatIsAt } from "./own-file.js";
import { storeFiles } from "./store-files.js";

/**
 * Makes the folder and the file where there are none, for this user alone, and closes to others what is there already. A link in the place of a file would lead
 * what is written out of the folder, and is refused. Throws a StoreFault.
 */
export async function prepareFile(file: string): Promise<void> {
  const folder = dirname(file);
  try {
    await makeFolder(folder);
    for (const path of storeFiles(file)) {
      const found = whatIsAt(path);
      if (found !== null && !found.isFile()) throw new StoreFault("not-a-file", path);
    }
    // SQLite takes an empty file for a new database.
    if (whatIsAt(file) === null) await (await open(file, "a", 0o600)).close();
    for (const path of storeFiles(file)) closeToOthers(path);
  } catch (error) {
    throw sqliteFault(error, file);
  }
}

async function makeFolder(folder: string): Promise<void> {
  try {
    await mkdir(folder, { recursive: true, mode: 0o700 });
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    throw code === "EEXIST" ? new StoreFault("not-a-folder", folder, { cause: error }) : error;
  }
}
