import type { Case } from "@halfturn/casefile";
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
  readonly subscribe: (changed: () => void) => () => void;
  /** Resolves when everything so far is on the device. */
  readonly kept: () => Promise<void>;
}

export interface OpenCaseDependencies {
  readonly store: DeviceStore;
  /** Milliseconds since 1970. */
  readonly now: () => number;
}

/** Opens a case of the device: from here on the memory is ahead and the store follows, in order. Null where there is no such case. */
export async function openCase(id: string, { store, now }: OpenCaseDependencies): Promise<OpenCase | null> {
  const [found, keptSteps] = await Promise.all([store.read(id), store.steps(id)]);
  return found && newOpenCase(found, keptSteps, { store, now });
}

function newOpenCase(found: DeviceCase, keptSteps: readonly EditStep[], { store, now }: OpenCaseDependencies): OpenCase {
  const { id } = found;
  let record = found;
  let steps = keptSteps;
  let lastEdit = Number.NEGATIVE_INFINITY;
  let writing: Promise<void> = Promise.resolve();
  const listeners = new Set<() => void>();

  const keep = (next: Partial<DeviceCase>, stepsFrom?: number): void => {
    record = { ...record, ...next };
    const written = record;
    const tail = stepsFrom === undefined ? null : { from: stepsFrom, steps: steps.slice(stepsFrom) };
    writing = writing.then(async () => {
      if (tail) await store.writeSteps(id, tail.from, tail.steps);
      await store.write(written);
    });
    for (const listener of listeners) listener();
  };
  const place = () => steps.length - record.undone;
  const changed = (document: Case): Partial<DeviceCase> => {
    const changedAt = new Date(now()).toISOString();
    return { document: { ...document, updatedAt: changedAt }, changedAt, waiting: 1 };
  };

  return {
    record: () => record,
    canUndo: () => place() > 0,
    canRedo: () => record.undone > 0,
    edit: (change) => {
      const before = record.document;
      const after = change(before);
      if (after === before) return;
      const next = changed(after);
      const at = place();
      const last = record.undone === 0 ? steps[at - 1] : undefined;
      const joined = last !== undefined && now() - lastEdit < ONE_STEP_MS && sameField(last, { before, after });
      lastEdit = now();
      const step = { before: joined ? last.before : before, after: next.document as Case };
      const from = joined ? at - 1 : at;
      const all = [...steps.slice(0, from), step];
      steps = all.slice(-KEPT_STEPS);
      keep({ ...next, undone: 0 }, all.length > KEPT_STEPS ? 0 : from);
    },
    undo: () => {
      const step = steps[place() - 1];
      if (step) keep({ ...changed(step.before), undone: record.undone + 1 });
    },
    redo: () => {
      const step = steps[place()];
      if (step) keep({ ...changed(step.after), undone: record.undone - 1 });
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    kept: () => writing,
  };
}

/** Stamped on every edit, so it says nothing about which field it was. */
const STAMP = "updatedAt";

/** Both edits changed one and the same place, and it is there before and after: a field typed in, not a row added. */
function sameField(last: EditStep, next: EditStep): boolean {
  const [before, ...more] = changedPlaces(last.before, last.after).filter((place) => place !== STAMP);
  const [after, ...others] = changedPlaces(next.before, next.after).filter((place) => place !== STAMP);
  return before !== undefined && before === after && more.length === 0 && others.length === 0;
}
