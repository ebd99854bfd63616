import type { Cause } from "@halfturn/engine/gauging";
import type { NameOf } from "./name-of.js";
import type { WhatToRepeat } from "./what-to-repeat.js";

/** The lists of a case file whose entries have a name of their own. */
export const LIST_KEYS = [
  "drivelines",
  "sections",
  "joints",
  "states",
  "gauging",
  "readings",
  "headings",
  "zeroCheck",
  "acceptedFindings",
  "adjusters",
  "corrections",
  "gears",
  "accessories",
  "recordings",
  "observations",
  "runouts",
  "balance",
] as const;
export type ListKey = (typeof LIST_KEYS)[number];

/** What a person calls a place where something was read or measured, so that it fits into a sentence. */
export interface PlaceWords {
  readonly reading: (shaft: string) => string;
  readonly end: Readonly<Record<"source-end" | "driven-end", (shaft: string) => string>>;
  readonly face: (shaft: string) => string;
  /** Read on the second shaft with the gauge zeroed on the first. */
  readonly between: (zeroedOn: string, readOn: string) => string;
  readonly from: Readonly<Record<"left" | "right", string>>;
  /** Counted from 1, as the report's table does. */
  readonly number: (number: number) => string;
  readonly zeroCheck: (number: number) => string;
  /** "reading 3": an entry of a list of the case file, counted from 1. */
  readonly entries: { readonly [L in ListKey]: (number: number) => string };
  /** An entry of any other list. */
  readonly entry: (list: string, number: number) => string;
  /** "reading 3 of gauging 1". */
  readonly within: (inner: string, outer: string) => string;
  readonly heading: (shaft: string) => string;
}

/** Parts of sentences that findings and explanations share. */
export interface Phrases {
  readonly causes: { readonly [C in Cause]: string };
  readonly places: PlaceWords;
  /** A place as a case file spells it, `front:driven-end`, `between:a,b` or `turn-round`, as an instruction: "Read ... ". */
  readonly readPlace: (spelled: string, nameOf: NameOf) => string;
  /** One instruction: what to read again, and why just that. `nameOf` knows the path too. */
  readonly repeat: (what: WhatToRepeat, nameOf: NameOf) => string;
  /** After a contradiction: which reading to doubt first, and what usually lies behind it. */
  readonly doubt: (likelier: string | null, readings: readonly string[], causes: readonly string[]) => string;
}
