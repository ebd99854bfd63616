import type { Case } from "@halfturn/casefile";
import type { Attachment, AttachmentType, CaseEvent, CaseHistory, CaseList, CaseRevision, HeldCase } from "@halfturn/exchange";
import type { DeviceStore } from "./devices/device-store.js";

/** Who changes something, and when. */
export interface By {
  /** The device or person. */
  readonly savedBy: string;
  /** ISO 8601. */
  readonly savedAt: string;
}

export interface ListQuery {
  /** Words of which each begins a word of the case; all cases when there is none. */
  readonly words: string;
  /** Lines at most, from 1. */
  readonly limit: number;
  /** `next` of the page before; null for the first. */
  readonly after: string | null;
  /** true: the cases that were put away instead. */
  readonly putAway: boolean;
}

/** A case that was put away keeps its last document. */
export type Read =
  | { readonly is: "held"; readonly held: HeldCase }
  | { readonly is: "put-away"; readonly revision: number }
  | { readonly is: "unknown" };

export type Created =
  | { readonly ok: true; readonly revision: CaseRevision }
  | { readonly ok: false; readonly why: "exists" }
  | { readonly ok: false; readonly why: "put-away"; readonly revision: number };

export type Saved =
  | { readonly ok: true; readonly revision: CaseRevision }
  | { readonly ok: false; readonly why: "unknown" }
  | { readonly ok: false; readonly why: "put-away"; readonly revision: number; readonly setAside: CaseRevision }
  /** Another save came first: what is held now, and where the refused document is kept. */
  | { readonly ok: false; readonly why: "conflict"; readonly current: HeldCase; readonly setAside: CaseRevision };

export type PutAway =
  | { readonly ok: true; readonly revision: CaseRevision }
  | { readonly ok: false; readonly why: "unknown" }
  | { readonly ok: false; readonly why: "put-away"; readonly revision: number }
  | { readonly ok: false; readonly why: "conflict"; readonly current: HeldCase };

export type BroughtBack =
  | { readonly ok: true; readonly revision: CaseRevision }
  | { readonly ok: false; readonly why: "unknown" | "not-put-away" };

export interface KeptRevision {
  readonly revision: CaseRevision;
  readonly document: Case;
}

/** A change and its number in the order of all changes. */
export interface Change {
  readonly sequence: number;
  readonly event: CaseEvent;
}

export interface Picture {
  readonly attachment: Attachment;
  readonly content: Uint8Array;
}

export interface NewPicture {
  readonly name: string;
  readonly hash: string;
  readonly type: AttachmentType;
  readonly content: Uint8Array;
}

export type Attached =
  | { readonly ok: true; readonly attachment: Attachment; readonly isNew: boolean }
  /** taken: another picture has that name. */
  | { readonly ok: false; readonly why: "unknown" | "taken" | "too-many" }
  | { readonly ok: false; readonly why: "put-away"; readonly revision: number };

/** What is wrong with the contents of the database, in words for whoever repairs it; empty when all is well. */
export type Damage = readonly string[];

/**
 * Cases and all that was ever saved of them. When a promise is kept, the change is on the disk. Every method may throw a StoreFault.
 * Ids are compared byte by byte.
 */
export interface CaseStore {
  readonly engine: "sqlite" | "postgres";
  readonly place: string;
  /** The devices of the local network; they are no part of a backup, because each pairs anew with the machine that it meets. */
  readonly devices: DeviceStore;
  /** Newest change first. */
  readonly list: (query: ListQuery) => Promise<CaseList>;
  readonly read: (id: string) => Promise<Read>;
  readonly create: (document: Case, by: By) => Promise<Created>;
  /** Takes up many cases, all of them or none; an id that is there already is a programmer error. */
  readonly createAll: (documents: readonly Case[], by: By) => Promise<void>;
  /** Saves over revision `over`; a document that comes second is kept in the history, set aside. */
  readonly save: (document: Case, over: number, by: By) => Promise<Saved>;
  readonly putAway: (id: string, over: number, by: By) => Promise<PutAway>;
  /** Restores the last saved document of a case that was put away, as a new revision. */
  readonly bringBack: (id: string, by: By) => Promise<BroughtBack>;
  /** Oldest first; null for a case that never was. */
  readonly history: (id: string) => Promise<CaseHistory | null>;
  readonly revision: (id: string, revision: number) => Promise<KeptRevision | null>;
  /** Changes after a number, in their order, at most `limit`. */
  readonly changesAfter: (sequence: number, limit: number) => Promise<readonly Change[]>;
  /** Number of the latest change; 0 when there was none. */
  readonly latest: () => Promise<number>;
  readonly attachments: (id: string) => Promise<readonly Attachment[] | null>;
  /** By its name, or by its hash. */
  readonly picture: (id: string, nameOrHash: string) => Promise<Picture | null>;
  readonly attach: (id: string, picture: NewPicture, by: By) => Promise<Attached>;
  /** Takes the picture from the case; its content goes when no other case has it. false where there was none. */
  readonly detach: (id: string, nameOrHash: string) => Promise<boolean>;
  /** Reads everything and holds it against its own marks. */
  readonly check: () => Promise<Damage>;
  /** Writes everything, as it is at one moment, into one file: a SQLite store of its own. The file must not be there; it appears only once it is whole and sound. */
  readonly backup: (file: string) => Promise<void>;
  readonly close: () => Promise<void>;
}
