import type { CaseRevision } from "@halfturn/exchange";
import type { Selectable } from "kysely";

/** Counts every change of the store. Taking the next number locks the row, so the numbers rise in the order in which changes are committed. */
export interface CounterTable {
  readonly name: "sequence";
  readonly value: number;
}

/** The current line of each case: small, so that a list reads nothing else. */
export interface CaseTable {
  readonly id: string;
  /** Of its latest change; the order of lists. */
  readonly sequence: number;
  /** What counts now, and the entity tag. */
  readonly revision: number;
  /** Number of the latest entry in its history, which may have been set aside. */
  readonly last_revision: number;
  /** 1 while the case is put away. */
  readonly removed: 0 | 1;
  readonly title: string;
  readonly vehicle: string | null;
  readonly gauged: 0 | 1;
  readonly corrected: 0 | 1;
  readonly proved: 0 | 1;
  readonly saved_at: string;
  readonly saved_by: string;
}

/** Everything that was ever saved of a case, whole. Rows are only added. */
export interface RevisionTable {
  readonly case_id: string;
  readonly revision: number;
  readonly sequence: number;
  readonly kind: CaseRevision["kind"];
  readonly saved_at: string;
  readonly saved_by: string;
  /** JSON text of the case. */
  readonly document: string;
  /** SHA-256 of `document`, hexadecimal, so that damage is seen. */
  readonly hash: string;
}

/** Content of pictures by its SHA-256; one picture in many cases is kept once. */
export interface PictureTable {
  readonly hash: string;
  readonly type: string;
  readonly bytes: number;
  readonly content: Uint8Array;
}

export interface AttachmentTable {
  readonly case_id: string;
  readonly name: string;
  readonly hash: string;
  readonly saved_at: string;
  readonly saved_by: string;
}

/** Devices that were let in from the local network. */
export interface DeviceTable {
  readonly id: string;
  readonly name: string;
  /** SHA-256 of the device's token, hexadecimal. */
  readonly token_hash: string;
  readonly paired_at: string;
  readonly last_seen_at: string;
}

export interface Tables {
  readonly devices: DeviceTable;
  readonly counter: CounterTable;
  readonly cases: CaseTable;
  readonly revisions: RevisionTable;
  readonly pictures: PictureTable;
  readonly attachments: AttachmentTable;
}

export type CaseRow = Selectable<CaseTable>;
