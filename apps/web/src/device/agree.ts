import type { Case } from "@halfturn/casefile";
import { type MergeConflict, mergeCases, resolveConflict, same } from "@halfturn/exchange";
import type { DeviceCase } from "./device-case.js";

/** What the server holds: a document and its revision. */
export interface Held {
  readonly document: Case;
  readonly revision: number;
}

/** The server took what was sent; what was changed meanwhile still waits. */
export const afterSaving = (record: DeviceCase, sent: Case, revision: number): DeviceCase => ({
  ...record,
  base: sent,
  revision,
  refused: null,
  waiting: record.document === sent ? 0 : 1,
});

/** Where two devices never agreed on anything, all that differs is a question. */
const NOTHING_AGREED = {} as Case;

/** Another device's revision came in: it and ours in one, and what has to be chosen. */
export function afterReceiving(record: DeviceCase, held: Held): DeviceCase {
  const { merged, conflicts } = mergeCases(record.base ?? NOTHING_AGREED, record.document, held.document);
  const fresh = new Set(conflicts.map(({ path }) => path));
  const open = record.conflicts.filter(({ path }) => !fresh.has(path));
  return {
    ...record,
    document: same(merged, record.document) ? record.document : merged,
    base: held.document,
    revision: held.revision,
    refused: null,
    conflicts: [...open, ...conflicts],
    waiting: same(merged, held.document) && open.length + conflicts.length === 0 ? 0 : 1,
  };
}

/** Somebody chose in one conflict. */
export const afterChoosing = (record: DeviceCase, conflict: MergeConflict, side: "mine" | "theirs"): DeviceCase => ({
  ...record,
  document: resolveConflict(record.document, conflict, conflict[side]),
  conflicts: record.conflicts.filter((other) => other !== conflict),
  waiting: 1,
});

/** A step back or forth: the change of the step the other way, on the document as it is now, so that nothing of another device is taken back with it. */
export const afterStep = (document: Case, from: Case, to: Case): Case => {
  if (document === from) return to;
  return from === to ? document : mergeCases(from, to, document).merged;
};
