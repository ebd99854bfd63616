import { Dexie, type Table } from "dexie";
import type { DeviceCase, DeviceStore, EditStep } from "./device-case.js";

interface StepRow extends EditStep {
  readonly caseId: string;
  readonly place: number;
}

class Database extends Dexie {
  readonly cases!: Table<DeviceCase, string>;
  readonly steps!: Table<StepRow, [string, number]>;

  constructor() {
    super("halfturn");
    this.version(1).stores({ cases: "id, waiting", steps: "[caseId+place]" });
  }
}

export const database = new Database();

const stepsFrom = (id: string, from: number) => database.steps.where("[caseId+place]").between([id, from], [id, Dexie.maxKey]);

/** Windows of one device tell each other what they wrote; the one that posts does not hear itself. */
const windows = new BroadcastChannel("halfturn-cases");

/** The device's own store: it answers without a network, and survives a reload. */
export const deviceStore: DeviceStore = {
  all: () => database.cases.toArray(),
  waiting: () => database.cases.where("waiting").equals(1).count(),
  read: async (id) => (await database.cases.get(id)) ?? null,
  write: async (record, tail) => {
    await database.transaction("rw", database.cases, database.steps, async () => {
      await database.cases.put(record);
      if (!tail) return;
      await stepsFrom(record.id, tail.from).delete();
      await database.steps.bulkPut(tail.steps.map((step, k) => ({ ...step, caseId: record.id, place: tail.from + k })));
    });
    windows.postMessage(record.id);
  },
  watch: (written) => windows.addEventListener("message", ({ data }: MessageEvent<string>) => written(data)),
  steps: async (id) => (await stepsFrom(id, 0).toArray()).map(({ before, after }) => ({ before, after })),
};
