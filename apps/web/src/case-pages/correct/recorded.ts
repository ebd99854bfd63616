import { basisGaugings, type Case, recordCorrection, toCorrectionInput } from "@halfturn/casefile";
import type { Change, Plan } from "@halfturn/engine/correction";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";

/** What can be put on record: a plan of the search, or changes tried by hand with what was foretold of them. */
export type Recordable = Pick<Plan, "instructions" | "states"> &
  Partial<Pick<Plan, "probabilityWithin" | "probabilityOfLimits">> & { readonly changes: readonly Change[] };

/** The case with a plan on record as chosen. `date`: ISO 8601. Names alone are taken from the input, so it need not draw anything. */
export function recorded(document: Case, plan: Recordable, date: string): Case {
  const basis = basisGaugings(document);
  const input = toCorrectionInput(document, { defaults: DEFAULT_LIMITS, draws: 100, seed: 1, chosen: basis });
  return recordCorrection(document, { ...plan, input, basis }, date);
}

type Last = NonNullable<Case["corrections"]>[number];

const withLast = (document: Case, change: (last: Last) => readonly Last[], date: string): Case => {
  const all = document.corrections ?? [];
  const last = all.at(-1);
  return last ? { ...document, updatedAt: date, corrections: [...all.slice(0, -1), ...change(last)] } : document;
};

/** The last correction marked as made, or as only chosen again. */
export const markedMade = (document: Case, date: string): Case =>
  withLast(document, (last) => [{ ...last, state: "made", madeAt: date }], date);

export const markedNotMade = (document: Case, date: string): Case =>
  withLast(document, ({ madeAt: _madeAt, ...last }) => [{ ...last, state: "chosen" }], date);

/** The case without its last correction, as long as nobody made it. */
export const dropped = (document: Case, date: string): Case => withLast(document, (last) => (last.state === "made" ? [last] : []), date);
