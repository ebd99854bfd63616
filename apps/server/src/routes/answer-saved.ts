import type { CaseRevision, HeldCase, SaveConflict } from "@halfturn/exchange";
import type { Context } from "hono";
import { tagOf } from "../http/entity-tag.js";

/** A change was made: the revision, and its tag. */
export function answerSaved(c: Context, revision: CaseRevision, status: 200 | 201): Response {
  c.header("etag", tagOf(revision.revision));
  c.header("cache-control", "no-store");
  return c.json(revision, status);
}

/** Another change came first: what is held now, with its tag. */
export function answerConflict(c: Context, conflict: SaveConflict | { readonly current: HeldCase }): Response {
  c.header("etag", tagOf(conflict.current.revision));
  c.header("cache-control", "no-store");
  return c.body(JSON.stringify(conflict), 412, { "content-type": "application/json" });
}
