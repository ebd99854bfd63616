/** What kind of JSON value stands somewhere. */
export type JsonKind = "null" | "boolean" | "number" | "string" | "array" | "object";

/** What the schema wants at a place. */
export type Expected = "number" | "whole-number" | "string" | "boolean" | "object" | "array";

/** Where a number, a text length or a list length may lie. A bound is left out where there is none; `above` and `below` exclude the bound itself. */
export interface Bounds {
  readonly minimum?: number;
  readonly above?: number;
  readonly maximum?: number;
  readonly below?: number;
}

/** What each problem carries for the words to be made from. */
export interface ProblemParams {
  /** Where the text stops being JSON, both from 1. */
  readonly "not-json": { readonly line: number; readonly column: number };
  /** Nothing in the file, or only white space. */
  readonly "empty-file": Readonly<Record<never, never>>;
  /** JSON, but not a case: no object, or another `format`. */
  readonly "not-a-case": { readonly expected: string; readonly got: string };
  readonly "wrong-version": { readonly got: number; readonly newest: number };
  /** Larger than what is read: bytes of the file, or levels of nesting. */
  readonly "too-large": { readonly of: "bytes" | "levels"; readonly got: number; readonly limit: number };
  /** A key that has to be there; `allowed` where only some words will do. */
  readonly missing: { readonly key: string; readonly allowed?: readonly string[] };
  readonly "wrong-type": { readonly expected: Expected; readonly got: JsonKind; readonly value: string; readonly example?: string };
  /** `of`: the size of a number, the length of a text in characters, or the length of a list. */
  readonly "out-of-range": Bounds & { readonly of: "number" | "text" | "list"; readonly got: number };
  /** Not one of the words allowed there. */
  readonly "not-allowed": { readonly got: string; readonly allowed: readonly string[]; readonly suggestion?: string };
  /** A text that is no id, no joint id or no ISO 8601 date. */
  readonly "wrong-form": { readonly expected: "id" | "joint-id" | "date" | "finding-code"; readonly got: string };
  /** A key nobody knows, so close to a known one that it is most likely a slip. */
  readonly "unknown-key-near": { readonly key: string; readonly suggestion: string };
  /** A key that belongs to another form of this object or another kind of it. */
  readonly "key-not-here": { readonly key: string };
  readonly "unknown-shaft": { readonly got: string; readonly allowed: readonly string[]; readonly suggestion?: string };
  readonly "unknown-reference": {
    readonly of: "driveline" | "section" | "joint" | "gear";
    readonly got: string;
    readonly allowed: readonly string[];
    readonly suggestion?: string;
  };
  readonly "duplicate-id": { readonly id: string; readonly first: string };
  /** An id that stands for a part of its own; of a section unless said otherwise. */
  readonly "reserved-id": { readonly id: string; readonly of?: "accessory" };
  /** sections: one fewer than joints. zero-check: readings come in pairs, first and turned. */
  readonly "count-mismatch": { readonly of: "sections" | "zero-check"; readonly expected: number; readonly got: number };
  /** Two numbers of one object contradict one another: `key` has to be at least, at most, or less than `other`. */
  readonly contradiction: {
    readonly key: string;
    readonly relation: "at-least" | "at-most" | "less-than";
    readonly other: string;
    readonly got: number;
    readonly limit: number;
    /** The other number is not in the file but built in. */
    readonly builtIn?: true;
  };
  /** The display of a gauge on a face across the shaft: near 90, or, where `face` says so already, not counted from plumb. */
  readonly "face-reading": { readonly got: number; readonly offPlumb: number; readonly marked: boolean };
  /** A length so small that it was most likely written in metres. */
  readonly "length-unit": { readonly got: number; readonly meant: number };
  /** A zeroed reading needs two different shafts. */
  readonly "same-shaft": { readonly shaft: string };
  /** A tyre size that gives no circumference: not spelled as one, or one whose diameter neither follows from it nor is known. */
  readonly "unreadable-tyre": { readonly got: string; readonly why: "unreadable" | "not-in-table" };
}

export const PROBLEM_CODES = [
  "empty-file",
  "not-json",
  "not-a-case",
  "wrong-version",
  "too-large",
  "missing",
  "wrong-type",
  "out-of-range",
  "not-allowed",
  "wrong-form",
  "unknown-key-near",
  "key-not-here",
  "unknown-shaft",
  "unknown-reference",
  "duplicate-id",
  "reserved-id",
  "count-mismatch",
  "contradiction",
  "face-reading",
  "length-unit",
  "same-shaft",
  "unreadable-tyre",
] as const satisfies readonly (keyof ProblemParams)[];

export type ProblemCode = (typeof PROBLEM_CODES)[number];

/** Why a file cannot be taken as it is. `path` is spelled as the file spells it, `drivelines[0].sections[1].lengthMm`; empty for the whole file. */
export type Problem = {
  readonly [Code in ProblemCode]: { readonly code: Code; readonly path: string; readonly params: ProblemParams[Code] };
}[ProblemCode];
