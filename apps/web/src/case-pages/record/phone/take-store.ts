import { Dexie, type Table } from "dexie";
import type { PhoneKind } from "./phone-kind.js";

/** A recording by this device, from its start on. */
export interface TakeHead {
  readonly id: string;
  readonly caseId: string;
  readonly kind: PhoneKind;
  /** ISO 8601, by this device's clock. */
  readonly startedAt: string;
  /** Samples per second of a sound; null where every sample has its own time. */
  readonly rate: number | null;
}

/** What was sensed in a while: one column each. */
export type TakeChunk = Readonly<Record<string, Float64Array>>;

/** Takes as they grow, so that a reload or an empty battery costs the last second at most. Rejects where there is no room, or the browser keeps nothing. */
export interface TakeStore {
  readonly begin: (head: TakeHead) => Promise<void>;
  readonly append: (id: string, place: number, chunk: TakeChunk) => Promise<void>;
  /** In the order in which they came. */
  readonly chunks: (id: string) => Promise<readonly TakeChunk[]>;
  readonly of: (caseId: string) => Promise<readonly TakeHead[]>;
  readonly drop: (id: string) => Promise<void>;
}

interface ChunkRow {
  readonly take: string;
  readonly place: number;
  readonly chunk: TakeChunk;
}

class TakeDatabase extends Dexie {
  readonly heads!: Table<TakeHead, string>;
  readonly rows!: Table<ChunkRow, [string, number]>;

  constructor() {
    super("halfturn-takes");
    this.version(1).stores({ heads: "id, caseId", rows: "[take+place]" });
  }
}

const database = new TakeDatabase();
const rowsOf = (id: string) => database.rows.where("[take+place]").between([id, Dexie.minKey], [id, Dexie.maxKey]);

export const takeStore: TakeStore = {
  begin: async (head) => {
    await database.heads.add(head);
  },
  append: async (take, place, chunk) => {
    await database.rows.put({ take, place, chunk });
  },
  chunks: async (id) => (await rowsOf(id).sortBy("place")).map(({ chunk }) => chunk),
  of: (caseId) => database.heads.where("caseId").equals(caseId).sortBy("startedAt"),
  drop: async (id) => {
    await database.transaction("rw", database.heads, database.rows, async () => {
      await rowsOf(id).delete();
      await database.heads.delete(id);
    });
  },
};
