import { existsSync } from "node:fs";
import { join } from "node:path";
import { openStore, type Restoring, restoreBackup, StoreFault, type StoreLocation } from "@halfturn/store";

/** Where a shop keeps its data. */
export interface ShopLocation {
  /** Where the database file lies, unless there is another database. */
  readonly folder: string;
  /** Address of a PostgreSQL database. */
  readonly database: string | null;
}

export const DATABASE_FILE = "halfturn.sqlite";

export const storeLocation = ({ folder, database }: ShopLocation): StoreLocation =>
  database === null ? { file: join(folder, DATABASE_FILE) } : { address: database };

/** The fault of the store that an error is; null where it is another error. */
export const storeFaultOf = (error: unknown): StoreFault | null => (error instanceof StoreFault ? error : null);

/** Writes all that a shop holds into one new file; true once it is there. Throws a StoreFault. */
export async function backUp(shop: ShopLocation, file: string): Promise<true> {
  const location = storeLocation(shop);
  // A shop that is not there is no empty shop: somebody named the wrong folder.
  if ("file" in location && !existsSync(location.file)) throw new StoreFault("file-missing", location.file);
  const store = await openStore(location);
  try {
    await store.backup(file);
    return true;
  } finally {
    await store.close();
  }
}

/** Puts a backup into an empty shop. Throws a StoreFault. */
export async function putBack(shop: ShopLocation, file: string): Promise<Restoring & { readonly place: string }> {
  const location = storeLocation(shop);
  const store = await openStore(location);
  const { place } = store;
  await store.close();
  return { ...(await restoreBackup(file, location)), place };
}
