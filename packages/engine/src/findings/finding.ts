import type { FindingCode } from "./codes.js";

/** stop: the numbers may not be used as they are. warn: they may, with care. note: worth knowing. */
export type Severity = "stop" | "warn" | "note";

/** What a finding says about, as data; the words live in the catalogue of a language. Angles are in degrees and say so in the key. */
export type FindingParams = Readonly<Record<string, number | string | boolean | readonly string[]>>;

/** Something the reasoning found. `path` names the place in the case file, as the file spells it: `gauging[0].readings[2]`. */
export interface Finding {
  readonly code: FindingCode;
  readonly severity: Severity;
  readonly path: string;
  readonly params: FindingParams;
}
