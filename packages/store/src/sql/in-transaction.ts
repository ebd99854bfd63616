import type { Kysely, Transaction } from "kysely";
import type { Tables } from "../schema/tables.js";

/**
 * Does all of the work or none of it. What is thrown is what went wrong first: a full disk ends SQLite's transaction by itself, and a lost connection
 * PostgreSQL's, so that the roll-back that follows fails too and would hide the reason.
 */
export async function inTransaction<Answer>(
  db: Kysely<Tables>,
  work: (transaction: Transaction<Tables>) => Promise<Answer>,
): Promise<Answer> {
  const failed: unknown[] = [];
  try {
    return await db.transaction().execute(async (transaction) => {
      try {
        return await work(transaction);
      } catch (error) {
        failed.push(error);
        throw error;
      }
    });
  } catch (error) {
    throw failed[0] ?? error;
  }
}
