import type { Cause } from "@halfturn/engine/gauging";
import type { NameOf } from "./name-of.js";
import type { WhatToRepeat } from "./what-to-repeat.js";

/** Parts of sentences that findings and explanations share. */
export interface Phrases {
  readonly causes: { readonly [C in Cause]: string };
  /** A place as a case file spells it, `front:driven-end`, `between:a,b` or `turn-round`, as an instruction: "Read ... ". */
  readonly readPlace: (spelled: string, nameOf: NameOf) => string;
  /** One instruction: what to read again, and why just that. */
  readonly repeat: (what: WhatToRepeat, nameOf: NameOf) => string;
  /** After a contradiction: which reading to doubt first, and what usually lies behind it. */
  readonly doubt: (likelier: string | null, readings: readonly string[], causes: readonly string[]) => string;
}
