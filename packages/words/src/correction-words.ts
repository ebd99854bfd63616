import type { ChangeProblemCode, ChangeProblemParams } from "@halfturn/casefile";
import type { AdjusterKind, InstructionCode, LimitKind, LookCode, PredictionVerdict, ReasonCode } from "@halfturn/engine/correction";
import type { QuantityFault, QuantityFaultCode } from "@halfturn/engine/units";
import type { CorrectionReader } from "./correction-reader.js";
import type { Numbers } from "./numbers/numbers.js";

/** What nobody measured: the part of a missing measurement's name before its colon. */
export const MISSING_KINDS = [
  "length",
  "centre-to-joint",
  "bearing",
  "spring-position",
  "pad-length",
  "slip",
  "first-joint",
  "axle-guide",
] as const;
export type MissingKind = (typeof MISSING_KINDS)[number];

/** Everything that is said about correcting, on the terminal and in the report. */
export interface CorrectionWords {
  /** One sentence or two for each step of the work. */
  readonly instructions: { readonly [Code in InstructionCode]: (of: CorrectionReader) => string };
  /** What stands in the way, and what to do about it. */
  readonly reasons: { readonly [Code in ReasonCode]: (of: CorrectionReader) => string };
  /** One line each: what is wrong with a change as typed, and what to type instead. */
  readonly changeProblems: {
    readonly [Code in ChangeProblemCode]: (params: ChangeProblemParams[Code], numbers: Numbers, faultText: string) => string;
  };
  readonly quantityFaults: { readonly [Code in QuantityFaultCode]: (params: QuantityFault["params"]) => string };
  readonly looks: { readonly [Code in LookCode]: string };
  readonly predictionVerdicts: { readonly [V in PredictionVerdict["verdict"]]: string };
  readonly limits: { readonly [K in LimitKind]: string };
  /** "3° nose up"; `positive` says which way. */
  readonly amounts: { readonly [K in AdjusterKind]: (amount: string, positive: boolean) => string };
  readonly missing: { readonly [K in MissingKind]: (name: string) => string };
  readonly steps: (amount: string, one: boolean) => string;
  readonly asGauged: string;
  readonly nothing: string;

  readonly predicted: string;
  readonly plans: string;
  /** "Plan 1". */
  readonly planNumber: (number: number) => string;
  /** Headings of the table of plans. */
  readonly columns: { readonly chance: string; readonly labour: string; readonly margin: string; readonly changes: string };
  /** What those headings mean. */
  readonly readPlans: string;
  readonly chance: (share: string) => string;
  readonly chanceUnknown: (share: string) => string;
  readonly labour: (amount: string) => string;
  readonly state: string;
  readonly slipTravel: string;
  readonly pulledOut: (length: string) => string;
  readonly pushedIn: (length: string) => string;
  readonly arrow: (before: string, after: string) => string;
  /** "the operating angle of J3". */
  readonly limitOf: (limit: string, part: string) => string;
  readonly tightest: (limit: string, value: string, bound: string, state: string) => string;
  readonly whatToDo: string;
  readonly caution: (text: string) => string;
  /** Stands where a caution was printed in full at an earlier step. */
  readonly cautionAsAt: (step: string) => string;
  /** "Front driveline: nothing changes." */
  readonly unchanged: (driveline: string) => string;
  readonly unlikely: string;
  readonly comparisons: string;
  readonly doingNothing: string;
  readonly bestSingle: string;
  readonly noSingle: string;
  readonly withoutAxle: string;
  readonly none: string;
  readonly noneBetter: string;
  /** The best that one adjuster alone could do in a size that would have to be made. */
  readonly cutToMeasure: string;
  readonly notStocked: (change: string) => string;
  readonly toMeasure: string;
  readonly nothingToMeasure: string;
  readonly measureGain: (what: string, gain: string) => string;
  readonly measureFirst: (what: string) => string;
  readonly infeasible: string;
  readonly nearest: (changes: string) => string;
  readonly blocks: string;
  readonly blockLimit: (limit: string, value: string, bound: string, state: string) => string;
  readonly blockHard: (changes: string, why: string) => string;
  readonly notUsed: string;
  readonly leftOut: string;
  readonly neverGauged: (driveline: string) => string;
  readonly learned: (corrections: number, readings: number) => string;
  readonly notLearned: string;
  readonly examined: (count: string) => string;
  readonly anglesOnly: string;
  readonly neverFit: string;
  readonly chosen: (number: number, path: string) => string;
  readonly chooseHint: (path: string, number: string) => string;
  readonly showHint: (path: string) => string;
  readonly searching: (share: string) => string;
  readonly stopped: string;
  readonly foretold: string;
  readonly measured: string;
  readonly lookAt: string;
  readonly chosenOn: (date: string) => string;
}
