import type { StoreLocation } from "./open-database.js";

/** Lets go of what was held. */
export type LetGo = () => void;

/**
 * Keeps a SQLite store for one program that changes it: a second server would not hear of the first one's changes, and two of them on one folder are mostly a slip.
 * Reading and backing up are not kept out. The system itself ends the hold of a program that was killed. A PostgreSQL store may have several servers. Throws a
 * StoreFault, `store-held` where another program holds it.
 */
export async function holdStore(location: StoreLocation): Promise<LetGo> {
  if ("address" in location) return () => undefined;
  const { prepareFile } = await import("./database/prepare-file.js");
  await prepareFile(location.file);
  const { holdFile } = await import("./database/hold-file.js");
  return holdFile(location.file);
}
