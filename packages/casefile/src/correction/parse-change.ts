import { type Adjuster, amountsOf, type Change, type CorrectionInput, exceedsFitted, mountingOf } from "@halfturn/engine/correction";
import { parseQuantity } from "@halfturn/engine/units";
import { suggestionFor } from "../problems/index.js";
import { type FileUnit, fileUnitOf, writtenAmount } from "./amounts.js";
import type { ChangeProblem, ChangeProblemCode, ChangeProblemParams } from "./change-problem.js";

export type ParsedChange = { readonly ok: true; readonly change: Change } | { readonly ok: false; readonly problem: ChangeProblem };
export type ParsedChanges =
  | { readonly ok: true; readonly changes: readonly Change[] }
  | { readonly ok: false; readonly problems: readonly ChangeProblem[] };

/** Two sizes this close are one, in steps of the smallest unit that anybody cuts to. */
const SAME_SIZE = 1e-9;

const refuse = <Code extends ChangeProblemCode>(code: Code, params: ChangeProblemParams[Code]) =>
  ({ ok: false, problem: { code, params } as ChangeProblem }) as const;

/** Several changes; each adjuster at most once. */
export function parseChanges(texts: readonly string[], input: CorrectionInput): ParsedChanges {
  const parsed = texts.map((text) => parseChange(text, input));
  const problems = parsed.flatMap((one) => (one.ok ? [] : [one.problem]));
  if (problems.length > 0) return { ok: false, problems };
  const changes = parsed.flatMap((one) => (one.ok ? [one.change] : []));
  const ids = changes.map(({ adjusterId }) => adjusterId);
  const twice = ids.find((id, k) => ids.indexOf(id) !== k);
  if (twice !== undefined) return { ok: false, problems: [refuse("adjuster-twice", { adjuster: twice }).problem] };
  return { ok: true, changes };
}

/**
 * A change as typed, `wedge=2deg`, `spacer=-6 mm`, `turn-front=1step`, against the adjusters of the case. The unit has to be there. Sizes between those in stock
 * pass, to try what could be cut to measure; sizes beyond them do not, nor does taking out more than is fitted.
 */
export function parseChange(text: string, input: CorrectionInput): ParsedChange {
  const at = text.indexOf("=");
  const id = text.slice(0, at).trim();
  const typed = text.slice(at + 1).trim();
  if (at < 0 || id === "" || typed === "") return refuse("change-form", { got: text });
  const allowed = input.adjusters.map((adjuster) => adjuster.id);
  if (allowed.length === 0) return refuse("no-adjusters", {});
  const adjuster = input.adjusters.find((candidate) => candidate.id === id);
  if (!adjuster) return refuse("unknown-adjuster", { got: id, allowed, ...suggestionFor(id, allowed) });
  const amount = parseAmount(adjuster, typed);
  return typeof amount === "number" ? withinReach(adjuster, amount, input) : amount;
}

const UNIT = /\p{Letter}|[°'"′″]/u;
const STEPS = /^([+\-−]?\s*\d+(?:[.,]\d+)?)\s*(steps?)?$/i;
const OTHER_UNITS: Readonly<Record<Exclude<FileUnit, "step">, "angle" | "length">> = { deg: "angle", mm: "length" };

function parseAmount(adjuster: Adjuster, typed: string): number | Extract<ParsedChange, { ok: false }> {
  const expected = fileUnitOf(adjuster.kind);
  const named = { adjuster: adjuster.id, got: typed, expected };
  if (expected === "step") return parseSteps(named, typed);
  if (/\bsteps?$/i.test(typed)) return refuse("wrong-unit", named);
  const read =
    OTHER_UNITS[expected] === "angle"
      ? parseQuantity(typed, { kind: "angle", defaultUnit: "deg" })
      : parseQuantity(typed, { kind: "length", defaultUnit: "mm" });
  if (!read.ok)
    return read.code === "quantity.unit-of-another-kind"
      ? refuse("wrong-unit", named)
      : refuse("amount-unreadable", { ...named, fault: read });
  if (!UNIT.test(typed)) return refuse("unit-missing", named);
  return read.value;
}

function parseSteps(
  named: { readonly adjuster: string; readonly got: string; readonly expected: FileUnit },
  typed: string,
): number | Extract<ParsedChange, { ok: false }> {
  const match = STEPS.exec(typed);
  if (!match) {
    const number = parseQuantity(typed.replace(/\p{Letter}.*$/u, ""), { kind: "length", defaultUnit: "mm" });
    return number.ok ? refuse("wrong-unit", named) : refuse("amount-unreadable", { ...named, fault: number });
  }
  const steps = Number((match[1] ?? "").replace("−", "-").replace(",", ".").replaceAll(/\s/g, ""));
  if (!Number.isInteger(steps)) return refuse("steps-not-whole", { adjuster: named.adjuster, got: typed });
  return match[2] === undefined ? refuse("unit-missing", named) : steps;
}

/** A spline can be turned by any whole number of steps; everything else reaches as far as its stock, nought and taking out what is fitted included. */
function withinReach(adjuster: Adjuster, amount: number, input: CorrectionInput): ParsedChange {
  const change = { adjusterId: adjuster.id, amount };
  if (adjuster.kind === "rephase" || amount === 0) return { ok: true, change };
  const unit = fileUnitOf(adjuster.kind);
  const mounted = mountingOf(adjuster, input);
  const params = { adjuster: adjuster.id, amount: writtenAmount(amount, unit), unit };
  if (exceedsFitted(adjuster, amount, mounted)) {
    return refuse("beyond-fitted", { ...params, fitted: writtenAmount("fitted" in adjuster ? adjuster.fitted : 0, unit) });
  }
  const reach = [0, ...amountsOf(adjuster, mounted)];
  const minimum = Math.min(...reach);
  const maximum = Math.max(...reach);
  if (amount >= minimum - SAME_SIZE && amount <= maximum + SAME_SIZE) return { ok: true, change };
  return refuse("beyond-stock", { ...params, minimum: writtenAmount(minimum, unit), maximum: writtenAmount(maximum, unit) });
}

/** Whether the shop has an amount in stock; nought and taking out what is fitted always are. */
export function isStocked({ adjusterId, amount }: Change, input: CorrectionInput): boolean {
  const adjuster = input.adjusters.find(({ id }) => id === adjusterId);
  if (!adjuster || adjuster.kind === "rephase") return true;
  return [0, ...amountsOf(adjuster, mountingOf(adjuster, input))].some((size) => Math.abs(size - amount) <= SAME_SIZE);
}
