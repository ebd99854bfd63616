import type { Transaction } from "kysely";
import type { Tables } from "../schema/tables.js";
import type { Database } from "./database.js";

/** Asks several questions of one moment of a database, however much is saved meanwhile. */
export function atOneMoment<Answer>(
  { db, engine }: Pick<Database, "db" | "engine">,
  work: (moment: Transaction<Tables>) => Promise<Answer>,
): Promise<Answer> {
  const reading = db.transaction();
  // A transaction of SQLite sees one moment by itself.
  return (engine === "postgres" ? reading.setIsolationLevel("repeatable read") : reading).execute(work);
}
