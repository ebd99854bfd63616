import type {
  Case,
  CaseAxle,
  CaseComplaint,
  CaseDriveline,
  CaseJoint,
  CaseLimits,
  CaseSection,
  CaseState,
  CaseVehicle,
} from "@halfturn/casefile";

/** What a field may become; null and an empty text take the key out, since the case file has no empty values. */
export type Changes<Of> = { readonly [Key in keyof Of]?: Of[Key] | null };

/** An object with other values. Keys that were not asked about stay as they are, in their order. */
export function changed<Of extends object>(before: Of | undefined, changes: Changes<Of>): Of {
  const next: Record<string, unknown> = { ...before };
  for (const [key, value] of Object.entries(changes)) {
    if (value === null || value === undefined || value === "") delete next[key];
    else next[key] = value;
  }
  return next as Of;
}

export type Edit = (document: Case) => Case;

export const editVehicle =
  (changes: Changes<CaseVehicle>): Edit =>
  (document) => ({ ...document, vehicle: changed(document.vehicle, changes) });

export const editComplaint =
  (changes: Changes<CaseComplaint>): Edit =>
  (document) => ({ ...document, complaint: changed(document.complaint, changes) });

const replaced = <Item>(list: readonly Item[], index: number, change: (item: Item) => Item): readonly Item[] =>
  list.map((item, k) => (k === index ? change(item) : item));

export const editDriveline =
  (index: number, change: (driveline: CaseDriveline) => CaseDriveline): Edit =>
  (document) => ({ ...document, drivelines: replaced(document.drivelines, index, change) });

export const editSection = (driveline: number, section: number, changes: Changes<CaseSection>): Edit =>
  editDriveline(driveline, (before) => ({ ...before, sections: replaced(before.sections, section, (one) => changed(one, changes)) }));

export const editJoint = (driveline: number, joint: number, changes: Changes<CaseJoint>): Edit =>
  editDriveline(driveline, (before) => ({ ...before, joints: replaced(before.joints, joint, (one) => changed(one, changes)) }));

export const editAxle = (driveline: number, changes: Changes<CaseAxle>): Edit =>
  editDriveline(driveline, (before) => ({ ...before, axle: changed(before.axle, changes) }));

export const editLimits =
  (changes: Changes<CaseLimits>): Edit =>
  (document) =>
    changed<Case>(document, { limits: orGone(changed<CaseLimits>(document.limits, changes)) });

/** The states to look at; a list with nothing in it goes. */
export const editStates =
  (change: (states: readonly CaseState[]) => readonly CaseState[]): Edit =>
  (document) => {
    const states = change(document.states ?? []);
    return changed<Case>(document, { states: states.length === 0 ? null : states });
  };

export const editNotes =
  (notes: string): Edit =>
  (document) =>
    changed<Case>(document, { notes });

/** null where an object has nothing left in it, so that it goes as well. */
export const orGone = <Of extends object>(value: Of): Of | null => (Object.keys(value).length === 0 ? null : value);
