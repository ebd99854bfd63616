import type { Kysely, Transaction } from "kysely";
import type { Tables } from "../schema/tables.js";

/**
 * Does all of the work or none of it. What is thrown is what went wrong first, in the work or in its commit: a full disk ends SQLite's transaction by itself, and a
 * lost connection PostgreSQL's, so that the roll-back that follows fails too and would hide the reason.
 */
export async function inTransaction<Answer>(
  db: Kysely<Tables>,
  work: (transaction: Transaction<Tables>) => Promise<Answer>,
): Promise<Answer> {
  const transaction = await db.startTransaction().execute();
  try {
    const answer = await work(transaction);
    await transaction.commit().execute();
    return answer;
  } catch (error) {
    await transaction
      .rollback()
      .execute()
      .catch(() => undefined);
    throw error;
  }
}
