import type { Severity } from "../findings/index.js";

/** Everything that attribution may remark. Words for each stand in the catalogue of every language. */
export const ATTRIBUTION_FINDING_CODES = [
  "attribution.clipped",
  "attribution.order-not-observable",
  "attribution.folded-back",
  "attribution.fold-back-coincides",
  "attribution.coincidence",
  "attribution.speed-loose",
  "attribution.speed-corrected",
  "attribution.speed-steady",
  "attribution.several",
  "attribution.nothing-found",
  "attribution.mostly-unexplained",
  "attribution.resonance",
  "attribution.beat",
  "attribution.sound-only",
] as const;

export type AttributionFindingCode = (typeof ATTRIBUTION_FINDING_CODES)[number];

/** A remark. Params: `part`, `order`, `otherPart`, `otherOrder` name orders; frequencies end in Hz; shares are 0 to 1 and end in Share. */
export interface AttributionFinding {
  readonly code: AttributionFindingCode;
  readonly severity: Severity;
  /** "channels[1]", or "" where it is about the whole. */
  readonly path: string;
  readonly params: Readonly<Record<string, number | string | boolean>>;
}
