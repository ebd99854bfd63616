import type { QuantityFault } from "@halfturn/engine/units";
import type { FileUnit } from "./amounts.js";

/** What each problem of a change carries for the words to be made from. */
export interface ChangeProblemParams {
  /** Not `ID=AMOUNT`. */
  readonly "change-form": { readonly got: string };
  readonly "no-adjusters": Readonly<Record<never, never>>;
  readonly "unknown-adjuster": { readonly got: string; readonly allowed: readonly string[]; readonly suggestion?: string };
  readonly "adjuster-twice": { readonly adjuster: string };
  readonly "unit-missing": { readonly adjuster: string; readonly got: string; readonly expected: FileUnit };
  readonly "wrong-unit": { readonly adjuster: string; readonly got: string; readonly expected: FileUnit };
  /** The amount cannot be read as a number. */
  readonly "amount-unreadable": {
    readonly adjuster: string;
    readonly got: string;
    readonly expected: FileUnit;
    readonly fault: QuantityFault;
  };
  readonly "steps-not-whole": { readonly adjuster: string; readonly got: string };
  /** Further than any size of the stock reaches; bounds in the unit. */
  readonly "beyond-stock": {
    readonly adjuster: string;
    readonly amount: number;
    readonly unit: FileUnit;
    readonly minimum: number;
    readonly maximum: number;
  };
  /** Takes out more than is fitted. */
  readonly "beyond-fitted": { readonly adjuster: string; readonly amount: number; readonly unit: FileUnit; readonly fitted: number };
}

export const CHANGE_PROBLEM_CODES = [
  "change-form",
  "no-adjusters",
  "unknown-adjuster",
  "adjuster-twice",
  "unit-missing",
  "wrong-unit",
  "amount-unreadable",
  "steps-not-whole",
  "beyond-stock",
  "beyond-fitted",
] as const satisfies readonly (keyof ChangeProblemParams)[];

export type ChangeProblemCode = (typeof CHANGE_PROBLEM_CODES)[number];

/** Why a change as typed cannot be made. */
export type ChangeProblem = {
  readonly [Code in ChangeProblemCode]: { readonly code: Code; readonly params: ChangeProblemParams[Code] };
}[ChangeProblemCode];
