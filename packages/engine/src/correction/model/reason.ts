import type { FindingParams } from "../../findings/index.js";

/** Why a correction cannot be computed or may not be planned. Words for each stand in the catalogue of every language. */
export const REASON_CODES = [
  "correction.stop-finding",
  "correction.phasing-not-measured",
  "correction.shaft-not-gauged",
  "correction.moves-refused-driveline",
  "correction.no-driveline",
  "correction.no-adjusters",
  "correction.unknown-adjuster",
  "correction.unknown-driveline",
  "correction.unknown-joint",
  "correction.unknown-section",
  "correction.support-not-given",
  "correction.length-not-measured",
  "correction.powertrain-not-measured",
  "correction.axle-guide-not-measured",
  "correction.spline-not-whole",
  "correction.amount-not-finite",
  "correction.removal-exceeds-fitted",
  "correction.caster-not-given",
  "correction.caster-out-of-limits",
  "correction.spacer-out-of-reach",
  "correction.guide-out-of-reach",
  "correction.shaft-out-of-reach",
  "correction.slip-below-minimum",
  "correction.slip-bottoms",
  "correction.too-many-combinations",
] as const;

export type ReasonCode = (typeof REASON_CODES)[number];

/** Params as in findings: lengths in millimetres and angles in degrees, and each key says so. */
export interface Reason {
  readonly code: ReasonCode;
  readonly path: string;
  readonly params: FindingParams;
}

/** A reason about a place in the case file; params in millimetres and degrees, as the keys say. */
export const reason = (code: ReasonCode, path: string, params: FindingParams = {}): Reason => ({ code, path, params });

/** A value, or why there is none. */
export type Outcome<Value> = { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly reasons: readonly Reason[] };

/** The outcome that is the value. */
export const success = <Value>(value: Value): Outcome<Value> => ({ ok: true, value });
/** The outcome that is one reason or more. */
export const failure = (...reasons: readonly Reason[]): Outcome<never> => ({ ok: false, reasons });
