import type { CaseStore } from "@halfturn/store";
import type { ChangeFeed } from "./change-feed.js";

/** Soon enough for two people who work on one case. */
const ASK_EACH_MS = 1000;

/**
 * Announces what other servers change in the same database. Only a PostgreSQL store can have others, and it is asked only while somebody listens. It is asked for one
 * number each second rather than told by the database itself: that needs no connection of its own, passes every kind of pooler, and goes on by itself once a lost
 * database is back. Gives what ends it.
 */
export function followStore(store: Pick<CaseStore, "engine" | "latest">, feed: ChangeFeed): () => void {
  if (store.engine !== "postgres") return () => undefined;
  let seen = -1;
  let asking = false;
  const ask = async (): Promise<void> => {
    if (asking || feed.listeners() === 0) return;
    asking = true;
    try {
      const latest = await store.latest();
      if (latest !== seen) feed.announce();
      seen = latest;
    } catch {
      // Whoever asks the database for something will be told; it is asked again in a second.
    } finally {
      asking = false;
    }
  };
  const timer = setInterval(() => void ask(), ASK_EACH_MS).unref();
  return () => clearInterval(timer);
}
