import type { Case } from "@halfturn/casefile";
import { z } from "zod";

/** Where a case stands, for a list: each step of the main flow that has something in it. */
export const caseProgress = z
  .object({
    gauged: z.boolean(),
    corrected: z.boolean(),
    proved: z.boolean(),
  })
  .meta({ id: "CaseProgress" });

/** A line in the list of cases. */
export const caseSummary = z
  .object({
    id: z.string(),
    title: z.string(),
    vehicle: z.string().nullable(),
    /** Counts what was kept of this case from 1; the entity tag of the case is this number in quotes. A save that was set aside takes a number of its own. */
    revision: z.int().min(1),
    /** ISO 8601, by the server's clock. */
    savedAt: z.string(),
    /** The device or person that saved it. */
    savedBy: z.string(),
    progress: caseProgress,
  })
  .meta({ id: "CaseSummary" });

export const caseList = z
  .object({
    cases: z.array(caseSummary),
    /** Pass it as `after` for the next page; null on the last one. */
    next: z.string().nullable(),
  })
  .meta({ id: "CaseList" });

/** One save of a case, without the document. */
export const caseRevision = z
  .object({
    revision: z.int().min(1),
    savedAt: z.string(),
    /** The device or person that saved it. */
    savedBy: z.string(),
    /** saved: it became the case. set-aside: it was refused because another save came first, and is kept. removed: the case was put away. */
    kind: z.enum(["saved", "set-aside", "removed"]),
  })
  .meta({ id: "CaseRevision" });

export const caseHistory = z.object({ id: z.string(), revisions: z.array(caseRevision) }).meta({ id: "CaseHistory" });

/** Sent on the stream of events whenever a case has a new revision that counts; what was set aside changes nothing and is not told. */
export const caseEvent = z
  .object({
    id: z.string(),
    revision: z.int().min(1),
    savedBy: z.string(),
    /** removed: the case was put away. */
    kind: z.enum(["saved", "removed"]),
  })
  .meta({ id: "CaseEvent" });

export type CaseProgress = Readonly<z.infer<typeof caseProgress>>;
export type CaseSummary = Readonly<z.infer<typeof caseSummary>>;
export type CaseList = { readonly cases: readonly CaseSummary[]; readonly next: string | null };
export type CaseRevision = Readonly<z.infer<typeof caseRevision>>;
export type CaseHistory = { readonly id: string; readonly revisions: readonly CaseRevision[] };
export type CaseEvent = Readonly<z.infer<typeof caseEvent>>;

/** A case as the server holds it. */
export interface HeldCase {
  readonly revision: number;
  readonly savedAt: string;
  readonly savedBy: string;
  readonly document: Case;
}

/** The answer to a save that came second: what the server holds, and where in the history the refused document is kept. */
export interface SaveConflict {
  readonly current: HeldCase;
  readonly setAside: CaseRevision;
}
