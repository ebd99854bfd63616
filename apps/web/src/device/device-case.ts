import type { Case } from "@halfturn/casefile";
import type { MergeConflict } from "@halfturn/exchange";

/** A case as this device keeps it. */
export interface DeviceCase {
  readonly id: string;
  readonly document: Case;
  /** What the server held when we last agreed, and its revision; null until it has been there. */
  readonly base: Case | null;
  readonly revision: number | null;
  /** 1: something waits to be sent. A number, because an index cannot hold a truth value. */
  readonly waiting: 0 | 1;
  /** 1: put away; it stands in no list, and can be brought back. */
  readonly putAway: 0 | 1;
  /** What two devices changed each in its own way: nothing is sent until somebody chose. The document holds ours meanwhile. */
  readonly conflicts: readonly MergeConflict[];
  /** Why the server will not have it as it is; null where it would. */
  readonly refused: string | null;
  /** ISO 8601, by this device's clock. */
  readonly changedAt: string;
  /** How many steps at the end of the list of steps are undone. */
  readonly undone: number;
}

/** Where a document comes from that others may have as well: a revision of the server, or null for one that every copy of the app holds. */
export interface Origin {
  readonly revision: number | null;
}

/** A case as it comes to a device for the first time. */
export const firstRecord = (document: Case, changedAt: string, from?: Origin): DeviceCase => ({
  id: document.id,
  document,
  base: from ? document : null,
  revision: from?.revision ?? null,
  waiting: typeof from?.revision === "number" ? 0 : 1,
  putAway: 0,
  conflicts: [],
  refused: null,
  changedAt,
  undone: 0,
});

/** One edit, to go back over and forth. */
export interface EditStep {
  readonly before: Case;
  readonly after: Case;
}

/** Where a device keeps its cases. */
export interface DeviceStore {
  readonly all: () => Promise<readonly DeviceCase[]>;
  /** How many cases have something to be sent. */
  readonly waiting: () => Promise<number>;
  readonly read: (id: string) => Promise<DeviceCase | null>;
  /** Both or neither. */
  readonly write: (record: DeviceCase, steps?: StepsTail) => Promise<void>;
  readonly steps: (id: string) => Promise<readonly EditStep[]>;
  /** Calls with the id of every case that another window of this device has written. */
  readonly watch: (written: (id: string) => void) => void;
}

/** What the steps of a case end with: all from a place on are replaced. */
export interface StepsTail {
  readonly from: number;
  readonly steps: readonly EditStep[];
}
