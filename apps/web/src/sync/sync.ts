import type { CaseEvent } from "@halfturn/exchange";
import type { DeviceCase } from "../device/device-case.js";
import type { Shelf } from "../device/shelf.js";
import type { CaseServer } from "./case-server.js";
import { receive, sendCase } from "./send-case.js";

/** A burst of keystrokes is sent once. */
const SETTLED_MS = 400;
const FIRST_RETRY_MS = 2000;
const LONGEST_RETRY_MS = 30_000;

/** unknown: nothing was asked of the server yet. not-paired: it answers, but does not let this device in. */
export type Connection = "unknown" | "reached" | "unreachable" | "not-paired";

export interface SyncStatus {
  readonly connection: Connection;
  /** Cases with something that is not on the server. */
  readonly waiting: number;
}

export interface Timers {
  readonly set: (run: () => void, ms: number) => unknown;
  readonly clear: (timer: unknown) => void;
}

export interface SyncDependencies {
  readonly shelf: Shelf;
  readonly server: CaseServer;
  readonly timers: Timers;
}

export interface Sync {
  readonly status: () => SyncStatus;
  readonly subscribe: (changed: () => void) => () => void;
  /** Something of a case waits: it is sent when the typing rests. */
  readonly waiting: (id: string) => void;
  /** Sends everything that waits, and takes in everything that changed. */
  readonly catchUp: () => Promise<void>;
  /** The server told of a change. */
  readonly told: (event: CaseEvent) => Promise<void>;
  readonly reached: (reached: boolean) => void;
  readonly notPaired: () => void;
  /** Counts what the server told, of whatever case: the list may be another one. */
  readonly changes: () => number;
  readonly subscribeChanges: (changed: () => void) => () => void;
  /** Resolves when no case is being sent. */
  readonly idle: () => Promise<void>;
}

/** Keeps the device and the server in step: one case at a time for each case, in the order in which things happened. */
export function newSync({ shelf, server, timers }: SyncDependencies): Sync {
  let status: SyncStatus = { connection: "unknown", waiting: 0 };
  let retry: unknown = null;
  let retryMs = FIRST_RETRY_MS;
  const listeners = new Set<() => void>();
  const changeListeners = new Set<() => void>();
  let changes = 0;
  const settling = new Map<string, unknown>();
  const queues = new Map<string, Promise<void>>();

  const tell = (next: Partial<SyncStatus>): void => {
    const before = status;
    status = { ...status, ...next };
    if (before.connection === status.connection && before.waiting === status.waiting) return;
    for (const listener of listeners) listener();
  };
  const count = async (): Promise<void> => tell({ waiting: await shelf.waiting() });

  const retryLater = (): void => {
    if (retry !== null) return;
    retry = timers.set(() => {
      retry = null;
      void catchUp();
    }, retryMs);
    retryMs = Math.min(2 * retryMs, LONGEST_RETRY_MS);
  };
  let paired = true;
  const reached = (is: boolean): void => {
    if (is) paired = true;
    tell({ connection: is ? "reached" : paired ? "unreachable" : "not-paired" });
    if (is) retryMs = FIRST_RETRY_MS;
    else retryLater();
  };

  /** What is done with one case waits for what is being done with it: an event never overtakes the answer to our own save. */
  const inTurn = (id: string, work: () => Promise<void>): Promise<void> => {
    const next = (queues.get(id) ?? Promise.resolve()).then(work);
    queues.set(id, next);
    void next.then(() => {
      if (queues.get(id) === next) queues.delete(id);
    });
    return next;
  };
  const send = (id: string): Promise<void> =>
    inTurn(id, async () => {
      const open = await shelf.open(id);
      if (open?.record().waiting) reached((await sendCase(open, server)) === "settled");
      await open?.kept();
      await count();
    });
  const takeIn = (id: string, revision: number): Promise<void> =>
    inTurn(id, async () => {
      const open = await shelf.open(id);
      if (!open || (open.record().revision ?? 0) >= revision) return;
      reached(await receive(open, server));
    });

  let catching: Promise<void> | null = null;
  let again = false;
  /** Asked for while it runs, it runs once more: what came meanwhile may have been passed over. */
  const catchUp = (): Promise<void> => {
    again = catching !== null;
    catching ??= catchUpOnce().finally(() => {
      catching = null;
      if (again) void catchUp();
    });
    return catching;
  };
  const catchUpOnce = async (): Promise<void> => {
    const kept = (await shelf.list()).filter(({ putAway, waiting }) => waiting === 1 || putAway === 0);
    await Promise.all(kept.filter(({ waiting }) => waiting === 1).map(({ id }) => send(id)));
    await takeInChanges(kept);
    await count();
  };
  /** Reads the list until every case of this device was seen in it. */
  const takeInChanges = async (kept: readonly DeviceCase[]): Promise<void> => {
    const sought = new Map(kept.flatMap(({ id, revision }) => (revision === null ? [] : [[id, revision]])));
    for (let after: string | null = null; ; ) {
      const page = await server.list({ words: "", after });
      reached(page !== null);
      if (!page) return;
      for (const { id, revision } of page.cases) {
        if ((sought.get(id) ?? Number.POSITIVE_INFINITY) < revision) await takeIn(id, revision);
        sought.delete(id);
      }
      if (page.next === null) break;
      after = page.next;
    }
    // Not in the list: put away elsewhere.
    for (const id of sought.keys()) await inTurn(id, async () => void (await receiveOf(id)));
  };
  const receiveOf = async (id: string): Promise<void> => {
    const open = await shelf.open(id);
    if (open) await receive(open, server);
  };

  return {
    status: () => status,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    waiting: (id) => {
      timers.clear(settling.get(id));
      settling.set(
        id,
        timers.set(() => void send(id), SETTLED_MS),
      );
      // "Kept here" is said once it is.
      void shelf.open(id).then(async (open) => {
        await open?.kept();
        await count();
      });
    },
    catchUp,
    changes: () => changes,
    subscribeChanges: (listener) => {
      changeListeners.add(listener);
      return () => changeListeners.delete(listener);
    },
    told: async ({ id, revision }) => {
      changes += 1;
      for (const listener of changeListeners) listener();
      await takeIn(id, revision);
    },
    reached,
    notPaired: () => {
      paired = false;
      tell({ connection: "not-paired" });
    },
    idle: async () => {
      while (queues.size > 0) await Promise.all(queues.values());
    },
  };
}
