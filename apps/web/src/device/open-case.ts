import type { Case } from "@halfturn/casefile";
import type { MergeConflict } from "@halfturn/exchange";
import { afterChoosing, afterStep } from "./agree.js";
import { changedPlaces } from "./changed-places.js";
import type { DeviceCase, DeviceStore, EditStep } from "./device-case.js";

/** Further back nobody goes, and a device has only so much room. */
const KEPT_STEPS = 100;
/** Edits of one field within this time are one step: a word, not its letters. */
const ONE_STEP_MS = 1500;

/** A case that is open on this device. */
export interface OpenCase {
  readonly record: () => DeviceCase;
  readonly canUndo: () => boolean;
  readonly canRedo: () => boolean;
  readonly edit: (change: (document: Case) => Case) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Chooses one side of a conflict; that is an edit, and can be undone. */
  readonly choose: (conflict: MergeConflict, side: "mine" | "theirs") => void;
  readonly putAway: (away: boolean) => void;
  /** What became of sending: not an edit of anybody. */
  readonly update: (change: (record: DeviceCase) => DeviceCase) => void;
  readonly subscribe: (changed: () => void) => () => void;
  /** Takes in what another window of this device wrote. */
  readonly reread: () => Promise<void>;
  /** Resolves when everything so far is on the device. */
  readonly kept: () => Promise<void>;
}

export interface OpenCaseDependencies {
  readonly store: DeviceStore;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** Something waits to be sent. */
  readonly onWaiting: (id: string) => void;
}

/** Opens a case of the device: from here on the memory is ahead and the store follows, in order. Null where there is no such case. */
export async function openCase(id: string, dependencies: OpenCaseDependencies): Promise<OpenCase | null> {
  const [found, steps] = await Promise.all([dependencies.store.read(id), dependencies.store.steps(id)]);
  return found && newOpenCase(found, steps, dependencies);
}

function newOpenCase(found: DeviceCase, keptSteps: readonly EditStep[], { store, now, onWaiting }: OpenCaseDependencies): OpenCase {
  const { id } = found;
  let record = found;
  let steps = keptSteps;
  /** As this window last wrote or read it. */
  let written = found;
  let lastEdit = Number.NEGATIVE_INFINITY;
  let writing: Promise<void> = Promise.resolve();
  const listeners = new Set<() => void>();

  const keep = (next: DeviceCase, stepsFrom?: number): void => {
    record = next;
    const tail = stepsFrom === undefined ? undefined : { from: stepsFrom, steps: steps.slice(stepsFrom) };
    writing = writing.then(async () => {
      await store.write(next, tail);
      written = next;
    });
    for (const listener of listeners) listener();
    if (next.waiting) onWaiting(id);
  };
  const place = () => steps.length - record.undone;
  const changed = (next: DeviceCase, document: Case): DeviceCase => {
    const changedAt = new Date(now()).toISOString();
    return { ...next, document: { ...document, updatedAt: changedAt }, changedAt, waiting: 1, refused: null };
  };
  /** An edit, with its step; joined to the step before where both are of one field and close together. */
  const editTo = (next: DeviceCase, joinable: boolean): void => {
    const before = record.document;
    const edited = changed({ ...next, undone: 0 }, next.document);
    const at = place();
    const last = record.undone === 0 ? steps[at - 1] : undefined;
    const step = { before, after: edited.document };
    const joined = joinable && last?.after === before && now() - lastEdit < ONE_STEP_MS && sameField(last, step);
    lastEdit = now();
    const from = joined ? at - 1 : at;
    const all = [...steps.slice(0, from), joined ? { ...step, before: last.before } : step];
    steps = all.slice(-KEPT_STEPS);
    keep(edited, all.length > KEPT_STEPS ? 0 : from);
  };

  return {
    record: () => record,
    canUndo: () => place() > 0,
    canRedo: () => record.undone > 0,
    edit: (change) => {
      const document = change(record.document);
      if (document !== record.document) editTo({ ...record, document }, true);
    },
    undo: () => {
      const step = steps[place() - 1];
      if (!step) return;
      const document = afterStep(record.document, step.after, step.before);
      keep(changed({ ...record, undone: record.undone + 1 }, document));
    },
    redo: () => {
      const step = steps[place()];
      if (!step || record.undone === 0) return;
      const document = afterStep(record.document, step.before, step.after);
      keep(changed({ ...record, undone: record.undone - 1 }, document));
    },
    choose: (conflict, side) => editTo(afterChoosing(record, conflict, side), false),
    putAway: (away) => keep({ ...record, putAway: away ? 1 : 0, waiting: 1, changedAt: new Date(now()).toISOString() }),
    update: (change) => {
      const next = change(record);
      if (next !== record) keep(next);
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    reread: () => {
      writing = writing.then(async () => {
        const [stored, storedSteps] = await Promise.all([store.read(id), store.steps(id)]);
        if (!stored) return;
        const document = afterStep(stored.document, written.document, record.document);
        written = stored;
        steps = storedSteps;
        record = { ...stored, document };
        for (const listener of listeners) listener();
        if (document !== stored.document) keep({ ...record, waiting: 1 });
      });
      return writing;
    },
    kept: () => writing,
  };
}

/** Stamped on every edit, so it says nothing about which field it was. */
const STAMP = "updatedAt";

/** Both edits changed one and the same place, or the second went on within what the first began: a field typed in, not a row added. */
function sameField(last: EditStep, next: EditStep): boolean {
  const [before, ...more] = changedPlaces(last.before, last.after).filter((place) => place !== STAMP);
  const [after, ...others] = changedPlaces(next.before, next.after).filter((place) => place !== STAMP);
  if (before === undefined || after === undefined || more.length > 0 || others.length > 0) return false;
  return !after.endsWith("[]") && (after === before || after.startsWith(`${before}.`));
}
